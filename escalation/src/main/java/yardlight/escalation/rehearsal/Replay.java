package yardlight.escalation.rehearsal;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.limit.Finding;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Watching;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Point;

/**
 * What a point's own readings would have led to if it had been set up otherwise. They go by the rules that readings go by, and
 * what is found by those of alarms, with delays, deadbands and chatter as they would have been. Whoever is called answers at
 * once, so that each call is counted. Boxes and ladders have no part in it: it is for months of readings.
 */
public final class Replay {

    private static final String BOX = "-replay";

    /**
     * A time at which somebody would have been called.
     *
     * @param at when the alarm began
     * @param over when it was over; empty while it holds at the end
     */
    public record Called(String condition, Instant at, Optional<Instant> over) {}

    private final Point point;
    private final Timing timing;
    private final Map<String, Alarm> alarms = new TreeMap<>();
    private final Map<String, Called> calls = new LinkedHashMap<>();
    private Gauge gauge;

    private Replay(Point point) {
        Timing asked = point.timing();
        this.point = point;
        this.timing = new Timing(asked.onDelay(), asked.offDelay(), false, Optional.empty(), asked.nuisance());
        this.gauge = Gauge.unread(new Gauge.Key(point.site(), point.id()));
    }

    /**
     * Replays.
     *
     * @param point as it would be; its latching, and what suppresses it, do not count
     * @param readings of that point, in any order; each arrives when it is measured
     * @return the calls in order, up to the last reading
     */
    public static List<Called> of(Point point, List<Reading> readings) {
        var replay = new Replay(point);
        readings.stream().sorted(Comparator.comparing(Reading::at)).forEach(replay::take);
        return List.copyOf(replay.calls.values());
    }

    private void take(Reading reading) {
        Instant now = reading.at();
        Optional<Instant> missed = gauge.deadline().filter(deadline -> !deadline.isAfter(now));
        if (missed.isPresent()) {
            due(missed.get());
            take(Watching.missing(gauge, missed.get()), missed.get());
        }
        due(now);
        take(Watching.take(gauge, point.rules(), BOX, reading, now), now);
    }

    private void take(Watching.Step step, Instant now) {
        gauge = step.gauge();
        step.findings().stream().filter(Finding::turned).forEach(finding -> {
            var key = new AlarmKey(point.site(), point.id(), finding.condition());
            var report =
                    new Report(key, Optional.of(BOX), finding.holds(), Optional.empty(), Measured.NOTHING, now, false);
            Alarm before = alarms.getOrDefault(finding.condition(), Alarm.normal(key));
            put(AlarmRules.report(before, report, timing, Priority.MEDIUM, now), now);
        });
    }

    /** Delays that ran out between two readings. */
    private void due(Instant now) {
        for (Alarm alarm : List.copyOf(alarms.values())) {
            if (alarm.dueAt(timing).filter(at -> !at.isAfter(now)).isPresent()) {
                put(AlarmRules.due(alarm, timing, now), now);
            }
        }
    }

    private void put(AlarmRules.Step step, Instant now) {
        Alarm alarm = step.alarm();
        Instant at = alarm.occurredAt().orElse(now);
        var called = new Called(alarm.key().condition(), at, alarm.returnedAt());
        if (step.calls()) {
            calls.put(alarm.id(), called);
            alarm = AlarmRules.acknowledge(alarm, "replay", timing, now)
                    .map(AlarmRules.Step::alarm)
                    .orElse(alarm);
        } else {
            calls.replace(alarm.id(), called);
        }
        alarms.put(alarm.key().condition(), alarm);
    }
}
