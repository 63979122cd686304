package yardlight.db.columns;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;

/** The row that a result set stands on, in the types that the engine uses. */
public record Row(ResultSet rows) {

    public String text(String column) throws SQLException {
        return rows.getString(column);
    }

    public Optional<String> maybe(String column) throws SQLException {
        return Optional.ofNullable(rows.getString(column));
    }

    public Instant time(String column) throws SQLException {
        return rows.getObject(column, OffsetDateTime.class).toInstant();
    }

    public Optional<Instant> maybeTime(String column) throws SQLException {
        return Optional.ofNullable(rows.getObject(column, OffsetDateTime.class)).map(OffsetDateTime::toInstant);
    }

    public int number(String column) throws SQLException {
        return rows.getInt(column);
    }

    public long big(String column) throws SQLException {
        return rows.getLong(column);
    }

    /** Empty when there is nothing. */
    public byte[] bytes(String column) throws SQLException {
        byte[] value = rows.getBytes(column);
        return value == null ? new byte[0] : value;
    }

    public boolean flag(String column) throws SQLException {
        return rows.getBoolean(column);
    }

    Optional<Long> maybeBig(String column) throws SQLException {
        long value = rows.getLong(column);
        return rows.wasNull() ? Optional.empty() : Optional.of(value);
    }

    Optional<Double> maybeReal(String column) throws SQLException {
        double value = rows.getDouble(column);
        return rows.wasNull() ? Optional.empty() : Optional.of(value);
    }

    Optional<BigDecimal> maybeDecimal(String column) throws SQLException {
        return maybe(column).map(BigDecimal::new);
    }
}
