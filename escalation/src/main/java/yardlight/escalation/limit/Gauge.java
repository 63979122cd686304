package yardlight.escalation.limit;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import yardlight.escalation.reading.Reading;

/**
 * What is remembered of the readings of one point: as small after years as after a day. Changed only by what comes in order;
 * a reading older than the newest fills the series and nothing else.
 *
 * @param box that read it last
 * @param readAt time of the newest reading, whether or not it was a measurement
 * @param newest the newest measurement: a current loop that is broken gives none
 * @param heardAt when the newest reading arrived
 * @param deadline when the absence of readings is looked into; empty when none are expected
 * @param excused whether readings were missing because the box could not send any: then the point gets its time anew
 * @param holding the conditions that hold by the readings, whatever delays and people make of them
 * @param notes what each rule has to remember besides, by its name
 * @param recent the last day of measurements
 */
public record Gauge(
        Key key,
        Optional<String> box,
        Optional<Instant> readAt,
        Optional<Reading> newest,
        Optional<Instant> heardAt,
        Optional<Instant> deadline,
        boolean excused,
        SortedSet<String> holding,
        SortedMap<String, List<Double>> notes,
        Series recent) {

    /** Which point. */
    public record Key(String site, String point) {}

    public Gauge {
        // Most are empty, and there is a new one for each reading.
        holding = holding.isEmpty()
                ? Collections.emptySortedSet()
                : Collections.unmodifiableSortedSet(new TreeSet<>(holding));
        notes = notes.isEmpty()
                ? Collections.emptySortedMap()
                : Collections.unmodifiableSortedMap(new TreeMap<>(notes));
    }

    /** A point that was never read. */
    public static Gauge unread(Key key) {
        return new Gauge(
                key,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                new TreeSet<>(),
                new TreeMap<>(),
                Series.EMPTY);
    }

    public boolean holds(String condition) {
        return holding.contains(condition);
    }

    /** What a rule noted; empty when it never did. */
    public List<Double> noted(String rule) {
        return notes.getOrDefault(rule, List.of());
    }

    /** Whether the drift that holds is upwards; empty when none holds. */
    public Optional<Boolean> driftsUp() {
        List<Double> sums = noted(Sums.NAME);
        return holds(Conditions.DRIFT) && !sums.isEmpty() ? Optional.of(Sums.upwards(sums)) : Optional.empty();
    }

    /** A reading arrived that is newer than all before; what it says is another matter. */
    Gauge heard(String from, Instant measured, Instant now, Optional<Duration> missing) {
        return new Gauge(
                key,
                Optional.of(from),
                Optional.of(measured),
                newest,
                Optional.of(now),
                missing.map(now::plus),
                false,
                holding,
                notes,
                recent);
    }

    /** It was a measurement. */
    Gauge measured(Reading reading) {
        return new Gauge(
                key,
                box,
                readAt,
                Optional.of(reading),
                heardAt,
                deadline,
                excused,
                holding,
                notes,
                recent.with(reading.at(), reading.value()));
    }

    /** A measurement that came late. */
    Gauge late(Reading reading) {
        Series fuller = recent.with(reading.at(), reading.value());
        return new Gauge(key, box, readAt, newest, heardAt, deadline, excused, holding, notes, fuller);
    }

    /** The same with another time at which missing readings are looked into. */
    Gauge with(Optional<Instant> next, boolean forgiven) {
        return new Gauge(key, box, readAt, newest, heardAt, next, forgiven, holding, notes, recent);
    }

    /** The same with a condition that holds, or holds no more. */
    public Gauge with(String condition, boolean holds) {
        if (holds == holding.contains(condition)) {
            return this;
        }
        var next = new TreeSet<>(holding);
        if (holds) {
            next.add(condition);
        } else {
            next.remove(condition);
        }
        return new Gauge(key, box, readAt, newest, heardAt, deadline, excused, next, notes, recent);
    }

    /** The same with what a rule wants to remember; an empty list is nothing. */
    public Gauge noting(String rule, List<Double> numbers) {
        var next = new TreeMap<>(notes);
        if (numbers.isEmpty()) {
            next.remove(rule);
        } else {
            next.put(rule, List.copyOf(numbers));
        }
        return new Gauge(key, box, readAt, newest, heardAt, deadline, excused, holding, next, recent);
    }
}
