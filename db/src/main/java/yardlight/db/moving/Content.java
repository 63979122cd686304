package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import yardlight.db.evidence.SignedHead;

/** Looks at what is in a database, which may not have all its tables yet. */
final class Content {

    private static final String TABLES = "select lower(table_name) from information_schema.tables"
            + " where lower(table_schema) = lower(current_schema)";
    private static final String UNUSED = "select 1 from lane where turn + last_line + last_number + setup_version > 0";
    private static final String MOVED = "select about from log_line where line = ? and what = 'move'";
    private static final String OLDEST = "select min(line) from log_line";

    private final Connection connection;

    Content(Connection connection) {
        this.connection = connection;
    }

    /** The first table that has something in it: a gateway was started on it, if only once. Empty when nothing has. */
    Optional<String> filled() throws SQLException {
        Set<String> tables = tables();
        for (String table : Tables.MOVING) {
            String one = table.equals(Tables.LANE) ? UNUSED : "select 1 from " + table + " fetch first 1 rows only";
            if (tables.contains(table) && finds(one)) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }

    boolean hasTables() throws SQLException {
        return tables().containsAll(Tables.MOVING);
    }

    /**
     * Whether it stems from the crate with this head, as the line says that was the first one after it. When the lines of
     * that time are not kept any more, it is taken to be so if the same key signs.
     */
    boolean stemsFrom(SignedHead head) throws SQLException {
        long next = head.first() + head.size();
        try (PreparedStatement statement = connection.prepareStatement(MOVED)) {
            statement.setLong(1, next);
            try (ResultSet rows = statement.executeQuery()) {
                if (rows.next()) {
                    return rows.getString(1).contains(head.root());
                }
            }
        }
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(OLDEST)) {
            return rows.next() && rows.getLong(1) > next && signs(head.publicKey());
        }
    }

    private boolean signs(String publicKey) throws SQLException {
        return MoveOut.found(connection)
                .filter(key -> HexFormat.of().formatHex(key.open()).equals(publicKey))
                .isPresent();
    }

    private boolean finds(String sql) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            return rows.next();
        }
    }

    private Set<String> tables() throws SQLException {
        var tables = new HashSet<String>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(TABLES)) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        return tables;
    }
}
