package yardlight.db.moving;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A table with the columns of it that move, as it is in a database.
 *
 * @param atOnce how many of its rows may be in memory, however long they are
 */
record MovedTable(String name, List<Col> columns, int atOnce) {

    /** A column, in the order of the table. */
    record Col(String name, Kind kind) {}

    private static final String BETWEEN = "\t";
    private static final int MOST_ROWS = 500;

    /** Characters of as many rows as are in memory. */
    private static final long ROOM = 8_000_000;

    /** Bytes are declared without a length: as many as a day of readings may have. */
    private static final int BYTES = 64_000;

    MovedTable {
        columns = List.copyOf(columns);
    }

    static MovedTable of(Connection connection, String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet none = statement.executeQuery("select * from " + name + " where 1 = 0")) {
            ResultSetMetaData about = none.getMetaData();
            var columns = new ArrayList<Col>();
            long longest = 1;
            for (int i = 1; i <= about.getColumnCount(); i++) {
                var column = new Col(about.getColumnName(i).toLowerCase(Locale.ROOT), Kind.of(about.getColumnType(i)));
                if (!Tables.STAYING_COLUMNS.contains(name + "." + column.name())) {
                    columns.add(column);
                    longest += column.kind() == Kind.BYTES ? BYTES : about.getPrecision(i);
                }
            }
            return new MovedTable(name, columns, (int) Math.max(1, Math.min(MOST_ROWS, ROOM / longest)));
        }
    }

    /** The first line of its part in a crate: what its columns are called and what is in them. */
    String header() {
        return columns.stream()
                .map(column -> column.name() + ":" + column.kind().word())
                .collect(Collectors.joining(BETWEEN));
    }

    String select() {
        return "select " + names(", ") + " from " + name;
    }

    /** Puts a row in; the lane has its one row from the beginning. */
    String put() {
        return name.equals(Tables.LANE)
                ? "update lane set " + names(" = ?, ") + " = ? where id = 1"
                : "insert into " + name + " (" + names(", ") + ") values ("
                        + String.join(", ", Collections.nCopies(columns.size(), "?")) + ")";
    }

    private String names(String between) {
        return columns.stream().map(Col::name).collect(Collectors.joining(between));
    }

    /** Writes the row that the result set of {@link #select} stands on. */
    void write(ResultSet rows, StringBuilder line) throws SQLException {
        for (int i = 0; i < columns.size(); i++) {
            if (i > 0) {
                line.append(BETWEEN);
            }
            columns.get(i).kind().write(rows, i + 1, line);
        }
    }

    /**
     * Binds such a line to the statement of {@link #put}.
     *
     * @throws IllegalArgumentException when it is no line of this table; it names the column
     */
    void bind(PreparedStatement statement, String line, Fitted fitted) throws SQLException {
        String[] cells = line.split(BETWEEN, -1);
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(
                    "cells of a row must be as many as the columns, " + columns.size() + ": " + cells.length);
        }
        for (int i = 0; i < cells.length; i++) {
            Col column = columns.get(i);
            try {
                column.kind().bind(statement, i + 1, cells[i], text -> fitted.text(name, text));
            } catch (RuntimeException e) {
                throw new IllegalArgumentException(column.name() + ": " + e.getMessage(), e);
            }
        }
    }
}
