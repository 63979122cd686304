package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/**
 * What a point's own readings would have led to if it had been set up otherwise. They are walked through the engine, with
 * delays and deadbands as they would have been; whoever is called answers at once, so that each call is counted.
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
    private final Simulation simulation;
    private final Map<String, Called> calls = new LinkedHashMap<>();

    private Replay(Site site, Point point) {
        Timing asked = point.timing();
        this.point = new Point(
                point.id(),
                site.id(),
                point.name(),
                point.unit(),
                point.priority(),
                new Timing(asked.onDelay(), asked.offDelay(), false, Optional.empty(), asked.nuisance()),
                Set.of(),
                true,
                point.rules());
        var box = new Box(BOX, site.id(), Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO);
        var serving = new Site(site.id(), site.name(), site.zone(), site.ladder());
        var setup = new Setup(List.of(serving), List.of(box), List.of(this.point), List.of(), List.of(), List.of());
        var code = new AtomicInteger();
        simulation = new Simulation(setup, new Escalator(Links.NONE, code::incrementAndGet));
        simulation.watch(this::note);
    }

    /**
     * Replays.
     *
     * @param point as it would be; its latching, and what suppresses it, do not count
     * @param readings of that point, in any order; each arrives when it is measured
     * @return the calls in order
     */
    public static List<Called> of(Site site, Point point, List<Reading> readings) {
        var replay = new Replay(site, point);
        // One after the other, or the schedule would hold them all.
        readings.stream().sorted(Comparator.comparing(Reading::at)).forEach(reading -> {
            replay.simulation.at(reading.at(), new Stimulus.Measured(BOX, List.of(reading)));
            replay.simulation.run(reading.at());
        });
        return List.copyOf(replay.calls.values());
    }

    private void note(Happening happening) {
        happening.decision().changes().alarms().stream()
                .filter(alarm -> alarm.key().point().equals(point.id()))
                .forEach(alarm -> note(happening.at(), alarm));
    }

    private void note(Instant now, Alarm alarm) {
        if (alarm.occurrence() > 0) {
            Instant at = alarm.occurredAt().orElse(now);
            calls.put(alarm.id(), new Called(alarm.key().condition(), at, alarm.returnedAt()));
        }
        if (alarm.state() == AlarmState.UNACKNOWLEDGED || alarm.state() == AlarmState.RETURNED_UNACKNOWLEDGED) {
            simulation.at(now, new Stimulus.Acknowledge(alarm.key(), "replay", "page", Optional.empty()));
        }
    }
}
