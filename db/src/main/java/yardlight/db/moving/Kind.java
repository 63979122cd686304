package yardlight.db.moving;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.Locale;
import java.util.function.UnaryOperator;
import yardlight.db.columns.Column;

/** What is in a column, by whatever name a database calls it, and how that is written and read back exactly. */
enum Kind {
    TEXT(Types.VARCHAR),
    WHOLE(Types.BIGINT),
    REAL(Types.DOUBLE),
    FLAG(Types.BOOLEAN),
    TIME(Types.TIMESTAMP_WITH_TIMEZONE),
    DAY(Types.DATE),
    BYTES(Types.VARBINARY);

    /** Nothing, which is not the empty text. */
    static final String NONE = "\\N";

    private final int type;

    Kind(int type) {
        this.type = type;
    }

    /**
     * @param type one of {@link Types}
     * @throws IllegalArgumentException when no column that moves has this type
     */
    static Kind of(int type) {
        return switch (type) {
            case Types.VARCHAR, Types.CLOB -> TEXT;
            case Types.INTEGER, Types.BIGINT -> WHOLE;
            case Types.DOUBLE -> REAL;
            case Types.BIT, Types.BOOLEAN -> FLAG;
            case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> TIME;
            case Types.DATE -> DAY;
            case Types.BINARY, Types.VARBINARY -> BYTES;
            default -> throw new IllegalArgumentException("type of a column must be one that moves: " + type);
        };
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Writes the value of the row that the result set stands on. */
    void write(ResultSet rows, int index, StringBuilder line) throws SQLException {
        Object value = value(rows, index);
        if (value == null || rows.wasNull()) {
            line.append(NONE);
        } else if (this == TEXT) {
            Escaped.write((String) value, line);
        } else {
            line.append(value);
        }
    }

    private Object value(ResultSet rows, int index) throws SQLException {
        return switch (this) {
            case TEXT -> rows.getString(index);
            case WHOLE -> rows.getLong(index);
            case REAL -> rows.getDouble(index);
            case FLAG -> rows.getBoolean(index);
            case TIME -> instant(rows.getObject(index, OffsetDateTime.class));
            case DAY -> rows.getObject(index, LocalDate.class);
            case BYTES -> hex(rows.getBytes(index));
        };
    }

    private static Instant instant(OffsetDateTime time) {
        return time == null ? null : time.toInstant();
    }

    private static String hex(byte[] bytes) {
        return bytes == null ? null : HexFormat.of().formatHex(bytes);
    }

    /**
     * Binds what was written.
     *
     * @param texts makes of a text what the database keeps
     * @throws IllegalArgumentException or another {@link RuntimeException} when it was not written by {@link #write}
     */
    void bind(PreparedStatement statement, int index, String cell, UnaryOperator<String> texts) throws SQLException {
        if (cell.equals(NONE)) {
            statement.setNull(index, type);
            return;
        }
        switch (this) {
            case TEXT -> statement.setString(index, texts.apply(Escaped.read(cell)));
            case WHOLE -> statement.setLong(index, Long.parseLong(cell));
            case REAL -> statement.setDouble(index, Double.parseDouble(cell));
            case FLAG -> statement.setBoolean(index, flag(cell));
            case TIME -> statement.setObject(index, Column.stored(Instant.parse(cell)));
            case DAY -> statement.setObject(index, LocalDate.parse(cell));
            case BYTES -> statement.setBytes(index, HexFormat.of().parseHex(cell));
        }
    }

    private static boolean flag(String cell) {
        if (cell.equals("true") || cell.equals("false")) {
            return cell.equals("true");
        }
        throw new IllegalArgumentException("a flag must be true or false: " + cell);
    }
}
