package yardlight.gateway.strip;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.reading.Slot;

/** Puts readings where the gateway keeps them, past the door: a year of them comes through it too slowly for a test. */
public final class Stored {

    private static final int BATCH = 5_000;

    private Stored() {}

    /**
     * One reading after the other, until {@code to}, exclusive.
     *
     * @param series a number that no other has
     */
    public static void every(
            JdbcTemplate jdbc,
            Series series,
            Duration step,
            Instant from,
            Instant to,
            ToDoubleFunction<Instant> value) {
        jdbc.update("delete from reading_series where id = ?", series.number());
        jdbc.update(
                "insert into reading_series (id, site, point, unit, summed_to) values (?, ?, ?, ?, 0)",
                series.number(),
                series.site(),
                series.point(),
                series.unit());
        List<Object[]> rows = new ArrayList<>();
        for (Instant at = from; at.isBefore(to); at = at.plus(step)) {
            rows.add(new Object[] {Slot.of(series.number(), at), value.applyAsDouble(at)});
            if (rows.size() == BATCH) {
                jdbc.batchUpdate("insert into reading (slot, measured) values (?, ?)", rows);
                rows.clear();
            }
        }
        jdbc.batchUpdate("insert into reading (slot, measured) values (?, ?)", rows);
    }

    public static void forget(JdbcTemplate jdbc) {
        jdbc.update("delete from reading");
        jdbc.update("delete from reading_day");
        jdbc.update("delete from reading_series");
    }

    /** Where they belong. */
    public record Series(int number, String site, String point, String unit) {}
}
