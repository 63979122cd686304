package yardlight.db.columns;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table that holds values of one type.
 *
 * @param columns the first one is the primary key
 */
public record Table<T>(String name, List<Column<T>> columns) {

    public Table {
        columns = List.copyOf(columns);
    }

    /** {@code select} of all columns, as far as the table's name. */
    public String select() {
        return "select " + columns.stream().map(Column::name).collect(Collectors.joining(", ")) + " from " + name;
    }

    public String insert() {
        return "insert into " + name + " ("
                + columns.stream().map(Column::name).collect(Collectors.joining(", ")) + ") values ("
                + String.join(", ", Collections.nCopies(columns.size(), "?")) + ")";
    }

    /** {@code update} of all columns of the row with the same key. */
    public String update() {
        return "update " + name + " set "
                + columns.stream().skip(1).map(column -> column.name() + " = ?").collect(Collectors.joining(", "))
                + " where " + columns.get(0).name() + " = ?";
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
