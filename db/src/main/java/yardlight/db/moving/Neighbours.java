package yardlight.db.moving;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import yardlight.db.disk.Vendor;

/**
 * Whoever else has the database open, as a rule another gateway. On PostgreSQL only who has the same login is seen. An H2 file
 * has one process by its lock; where it is shared all the same (AUTO_SERVER, or a server of H2), each connection is seen.
 */
final class Neighbours {

    private static final String OTHERS = """
            select pid || ' (' || coalesce(application_name, '') || coalesce(' from ' || client_addr, '') || ')'
            from pg_stat_activity where datname = current_database() and usename = session_user
                and backend_type = 'client backend' and pid <> pg_backend_pid()
            order by pid
            """;

    private static final String OTHERS_ON_H2 = """
            select session_id || ' (' || user_name || ')' from information_schema.sessions
            where session_id <> session_id() order by session_id
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
        List<String> others = vendor == Vendor.H2 ? ask(connection, OTHERS_ON_H2) : onceTheyHadTimeToLeave(connection);
        if (!others.isEmpty()) {
            throw new MoveRefused("another gateway has the database open, or another program by the same login: "
                    + (vendor == Vendor.H2 ? "session " : "process ") + String.join(", ", others)
                    + " of the server. Stop it first");
        }
    }

    private static List<String> onceTheyHadTimeToLeave(Connection connection) throws SQLException {
        List<String> others = ask(connection, OTHERS);
        for (int look = 1; look < LOOKS && !others.isEmpty(); look++) {
            ask(connection, WAIT);
            others = ask(connection, OTHERS);
        }
        return others;
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
