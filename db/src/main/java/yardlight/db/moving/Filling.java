package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Puts the rows of one part of a crate into their table, a batch at a time. */
final class Filling implements CrateFile.Lines {

    private static final int MOST_ROWS = 500;

    /** Characters in one batch, or one row that is longer. */
    private static final int ROOM = 2_000_000;

    private final MovedTable table;
    private final PreparedStatement statement;
    private final Fitted fitted;
    private int rows;
    private int characters;

    private Filling(MovedTable table, PreparedStatement statement, Fitted fitted) {
        this.table = table;
        this.statement = statement;
        this.fitted = fitted;
    }

    /** @throws MoveRefused when the part has other columns, or what is in it does not fit into them */
    static void fill(Connection connection, CrateFile crate, Crate.Part part, Fitted fitted) throws SQLException {
        MovedTable table = MovedTable.of(connection, part.table());
        try (PreparedStatement statement = connection.prepareStatement(table.put())) {
            var filling = new Filling(table, statement, fitted);
            crate.read(part, filling);
            filling.flush();
        } catch (SQLException e) {
            // A driver's own words would have the values of the row in them.
            throw new MoveRefused("what is in " + part.table() + " is not taken: SQL state " + e.getSQLState(), e);
        }
    }

    @Override
    public void header(String line) {
        if (!line.equals(table.header())) {
            throw new MoveRefused("the columns of " + table.name() + " are not those of this release: " + line);
        }
    }

    @Override
    public void row(long number, String line) throws SQLException {
        try {
            table.bind(statement, line, fitted);
        } catch (RuntimeException e) {
            throw new MoveRefused("row " + number + " of " + table.name() + " cannot be read: " + e.getMessage(), e);
        }
        statement.addBatch();
        rows++;
        characters += line.length();
        if (rows == MOST_ROWS || characters > ROOM) {
            flush();
        }
    }

    private void flush() throws SQLException {
        if (rows > 0) {
            statement.executeBatch();
        }
        rows = 0;
        characters = 0;
    }
}
