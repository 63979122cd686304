package yardlight.db.columns;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/**
 * One column and where its value comes from. Nulls are given their type, so that PostgreSQL need not prepare a statement
 * anew when the next row of a batch has a value there. Instants are kept to the microsecond, cut off: both databases
 * would round them otherwise, and a rounded time may lie in the future.
 */
public record Column<T>(String name, int type, Function<T, Object> value) {

    public static <T> Column<T> text(String name, Function<T, String> value) {
        return new Column<>(name, Types.VARCHAR, value::apply);
    }

    public static <T> Column<T> maybe(String name, Function<T, Optional<String>> value) {
        return new Column<>(name, Types.VARCHAR, row -> value.apply(row).orElse(null));
    }

    public static <T> Column<T> time(String name, Function<T, Instant> value) {
        return new Column<>(name, Types.TIMESTAMP_WITH_TIMEZONE, row -> stored(value.apply(row)));
    }

    public static <T> Column<T> maybeTime(String name, Function<T, Optional<Instant>> value) {
        return new Column<>(
                name,
                Types.TIMESTAMP_WITH_TIMEZONE,
                row -> value.apply(row).map(Column::stored).orElse(null));
    }

    public static <T> Column<T> number(String name, ToIntFunction<T> value) {
        return new Column<>(name, Types.INTEGER, value::applyAsInt);
    }

    public static <T> Column<T> big(String name, Function<T, Long> value) {
        return new Column<>(name, Types.BIGINT, value::apply);
    }

    public static <T> Column<T> real(String name, Function<T, Double> value) {
        return new Column<>(name, Types.DOUBLE, value::apply);
    }

    public static <T> Column<T> flag(String name, Predicate<T> value) {
        return new Column<>(name, Types.BOOLEAN, value::test);
    }

    public static <T> Column<T> bytes(String name, Function<T, byte[]> value) {
        return new Column<>(name, Types.VARBINARY, value::apply);
    }

    /** An instant as both drivers take it. */
    public static Object stored(Instant at) {
        return at.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    void bind(PreparedStatement statement, int index, T row) throws SQLException {
        Object bound = value.apply(row);
        if (bound == null) {
            statement.setNull(index, type);
        } else {
            statement.setObject(index, bound);
        }
    }
}
