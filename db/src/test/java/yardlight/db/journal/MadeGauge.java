package yardlight.db.journal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Series;
import yardlight.escalation.reading.Reading;

/** What is remembered of a point that was read for more than a day, with every part of it set. */
final class MadeGauge {

    private MadeGauge() {}

    static Gauge of(Gauge.Key key, Instant at) {
        Series day = Series.EMPTY;
        for (int minute = 0; minute < 1_600; minute++) {
            day = day.with(at.plusSeconds(60L * minute), 12 + minute / 7.0);
        }
        return new Gauge(
                key,
                Optional.of("mesa-9-box"),
                Optional.of(at),
                Optional.of(new Reading(key.site(), key.point(), 12.400000000000002, at.minusSeconds(1))),
                Optional.of(at.plusSeconds(1)),
                Optional.of(at.plusSeconds(901)),
                true,
                new TreeSet<>(Set.of("high", "high-high")),
                new TreeMap<>(Map.of("drift", List.of(1 / 3.0, 0.0, 1.0), "stuck", List.of(-1e-9, 1.7643e9))),
                day);
    }
}
