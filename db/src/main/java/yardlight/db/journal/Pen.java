package yardlight.db.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.db.columns.Row;
import yardlight.db.columns.Table;

/** The writer's connection with its statements, each prepared once and kept. */
final class Pen {

    /** Fills in the parameters of a statement for one row. */
    @FunctionalInterface
    interface Bind<T> {
        void to(PreparedStatement statement, T row) throws SQLException;
    }

    @FunctionalInterface
    interface Read<T> {
        T from(Row row) throws SQLException;
    }

    private final Connection connection;
    private final Optional<String> sync;
    private final Map<String, PreparedStatement> statements = new HashMap<>();
    private boolean broken;

    Pen(Connection connection, Optional<String> sync) {
        this.connection = connection;
        this.sync = sync;
    }

    /**
     * The rows that belong to one of these, as {@link Table#WANTED} has it; no query at all when there are none.
     *
     * @param values a double one counts once
     */
    <T> List<T> among(String sql, Collection<String> values, Read<T> read) {
        if (values.isEmpty()) {
            return List.of();
        }
        return read(
                sql,
                (statement, row) -> statement.setArray(
                        1,
                        connection.createArrayOf(
                                "varchar", values.stream().distinct().toArray())),
                read);
    }

    <T> List<T> read(String sql, Bind<Void> bind, Read<T> read) {
        try {
            PreparedStatement statement = prepared(sql);
            bind.to(statement, null);
            var found = new ArrayList<T>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    found.add(read.from(new Row(rows)));
                }
            }
            return found;
        } catch (SQLException e) {
            throw trouble("reading", e);
        } catch (RuntimeException | Error mistake) {
            spoil();
            throw mistake;
        }
    }

    <T> void insert(Table<T> table, Collection<T> rows) {
        write(table.insert(), rows, table::bindInsert);
    }

    <T> void update(Table<T> table, Collection<T> rows) {
        write(table.update(), rows, table::bindUpdate);
    }

    /** Runs the statement for each row, all in one batch, and comes back with the rows for which it found nothing to change. */
    <T> List<T> write(String sql, Collection<T> rows, Bind<T> bind) {
        if (rows.isEmpty()) {
            return List.of();
        }
        try {
            PreparedStatement statement = prepared(sql);
            for (T row : rows) {
                bind.to(statement, row);
                statement.addBatch();
            }
            return without(rows, statement.executeBatch());
        } catch (SQLException e) {
            throw trouble("writing", e);
        } catch (RuntimeException | Error mistake) {
            spoil();
            throw mistake;
        }
    }

    private static <T> List<T> without(Collection<T> rows, int[] changes) {
        var without = new ArrayList<T>();
        int i = 0;
        for (T row : rows) {
            if (changes[i++] == 0) {
                without.add(row);
            }
        }
        return without;
    }

    /** Commits, and comes back when the commit survives a power cut. */
    void commit() {
        try {
            connection.commit();
            if (sync.isPresent()) {
                prepared(sync.get()).execute();
            }
        } catch (SQLException e) {
            broken = true;
            throw trouble("committing", e);
        } catch (RuntimeException | Error mistake) {
            // Nobody knows whether it was stored, just as when the connection breaks here.
            throw trouble("committing", new SQLException("not known whether it was stored", mistake));
        }
    }

    /** Takes everything back. False when the connection is of no use any more. */
    boolean rollback() {
        try {
            if (!broken) {
                connection.rollback();
            }
        } catch (SQLException e) {
            broken = true;
        }
        return !broken;
    }

    /** A mistake of ours between two rows: nothing that this connection holds may reach the next transaction. */
    private void spoil() {
        broken = true;
        forget();
    }

    private JournalTrouble trouble(String doing, SQLException cause) {
        var trouble = new JournalTrouble(doing, cause);
        broken |= !trouble.data();
        forget();
        return trouble;
    }

    /** A statement that failed may still hold half a batch, so all of them go. */
    private void forget() {
        for (PreparedStatement statement : statements.values()) {
            try {
                statement.close();
            } catch (SQLException e) {
                broken = true;
            }
        }
        statements.clear();
    }

    private PreparedStatement prepared(String sql) throws SQLException {
        PreparedStatement known = statements.get(sql);
        if (known == null) {
            known = connection.prepareStatement(sql);
            statements.put(sql, known);
        }
        return known;
    }
}
