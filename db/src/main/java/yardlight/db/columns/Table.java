package yardlight.db.columns;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table that holds values of one type, with its statements.
 *
 * @param name of the table
 * @param columns the first one is the primary key
 * @param select {@code select} of all columns, as far as the table's name
 * @param insert {@code insert} of all columns
 * @param update {@code update} of all columns of the row with the same key
 */
public record Table<T>(String name, List<Column<T>> columns, String select, String insert, String update) {

    /**
     * The texts of an array, the only parameter, as rows to join with: {@code wanted.one}. H2 finds the rows of {@code = any(?)} by the
     * index as well, but then compares each of them with the whole array, so that time grows with the square of its length.
     */
    public static final String WANTED = "unnest(cast(? as varchar array)) as wanted(one)";

    public Table {
        columns = List.copyOf(columns);
    }

    /** The statements are written once: the lane runs them for each of its batches. */
    public static <T> Table<T> of(String name, List<Column<T>> columns) {
        String names = columns.stream().map(Column::name).collect(Collectors.joining(", "));
        String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
        String settings =
                columns.stream().skip(1).map(column -> column.name() + " = ?").collect(Collectors.joining(", "));
        return new Table<>(
                name,
                columns,
                "select " + names + " from " + name,
                "insert into " + name + " (" + names + ") values (" + marks + ")",
                "update " + name + " set " + settings + " where "
                        + columns.get(0).name() + " = ?");
    }

    /** {@code select} of the rows in which this column is one of {@link #WANTED}, each of which is there once. */
    public String among(String column) {
        return join(WANTED + " join " + name + " t on t." + column + " = wanted.one");
    }

    /** {@code select} of all columns from this, in which the table is {@code t}. */
    public String join(String from) {
        return "select " + columns.stream().map(column -> "t." + column.name()).collect(Collectors.joining(", "))
                + " from " + from;
    }

    public void bindInsert(PreparedStatement statement, T row) throws SQLException {
        for (int i = 0; i < columns.size(); i++) {
            columns.get(i).bind(statement, i + 1, row);
        }
    }

    public void bindUpdate(PreparedStatement statement, T row) throws SQLException {
        for (int i = 1; i < columns.size(); i++) {
            columns.get(i).bind(statement, i, row);
        }
        columns.get(0).bind(statement, columns.size(), row);
    }
}
