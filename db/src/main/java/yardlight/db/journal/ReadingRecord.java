package yardlight.db.journal;

import java.time.Instant;
import yardlight.db.reading.Series;
import yardlight.db.reading.Slot;

/**
 * A reading as it is stored.
 *
 * @param value in the unit of the series
 * @param at kept to the millisecond
 */
public record ReadingRecord(Series series, double value, Instant at) {

    long slot() {
        return Slot.of(series.id(), at);
    }

    long day() {
        return Slot.ofDay(series.id(), Slot.day(at));
    }
}
