package yardlight.db.moving;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import yardlight.db.disk.Vendor;

/**
 * Whoever else has the database open under the same login: as a rule another gateway. An H2 file has one process anyway, by
 * its lock.
 */
final class Neighbours {

    private static final String OTHERS = """
            select pid || ' (' || coalesce(application_name, '') || coalesce(' from ' || client_addr, '') || ')'
            from pg_stat_activity where datname = current_database() and usename = session_user
                and backend_type = 'client backend' and pid <> pg_backend_pid()
            order by pid
            """;

    /** A gateway that was stopped a moment ago is still taking its leave of the server. */
    private static final int LOOKS = 20;

    private static final String WAIT = "select pg_sleep(0.25)";

    private Neighbours() {}

    /**
     * @param connection the only one that this process has
     * @throws MoveRefused when there is somebody, and they do not leave
     */
    static void refuse(Connection connection, Vendor vendor) throws SQLException {
        if (vendor == Vendor.H2) {
            return;
        }
        List<String> others = ask(connection, OTHERS);
        for (int look = 1; look < LOOKS && !others.isEmpty(); look++) {
            ask(connection, WAIT);
            others = ask(connection, OTHERS);
        }
        if (!others.isEmpty()) {
            throw new MoveRefused(
                    "another gateway has the database open, or another program by the same login: process "
                            + String.join(", ", others) + " of the server. Stop it first");
        }
    }

    private static List<String> ask(Connection connection, String sql) throws SQLException {
        var answers = new ArrayList<String>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                answers.add(rows.getString(1));
            }
        }
        return answers;
    }
}
