package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Conditions;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** A box with four points that are missed after a quarter of an hour, minute by minute from noon on. */
final class UnreadPoints {

    static final List<String> ALL = List.of("flowline", "oil-tank", "separator", "water-tank");

    private static final Instant NOON = Fixtures.at("2026-11-25T12:00");

    private final Simulation day;

    /** @param every how often the box says that it lives; empty when it need not */
    UnreadPoints(Optional<Duration> every) {
        var code = new AtomicInteger(46);
        day = new Simulation(setup(every, ALL), new Escalator(Links.NONE, code::incrementAndGet));
    }

    private static Setup setup(Optional<Duration> every, List<String> inService) {
        var box =
                new Box("mesa-9-box", "mesa-9", Optional.empty(), Optional.empty(), true, every, Duration.ofMinutes(2));
        Rules usual = Fixtures.measuredTank().rules();
        var missed = new Rules(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                usual.missing(),
                Optional.empty());
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(box),
                ALL.stream()
                        .map(id -> new Point(
                                        id,
                                        "mesa-9",
                                        id,
                                        Optional.of("ft"),
                                        Optional.of(Priority.HIGH),
                                        Timing.PLAIN,
                                        Set.of(),
                                        inService.contains(id))
                                .with(missed))
                        .toList(),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }

    private static Instant at(int minute, int second) {
        return NOON.plusSeconds(60L * minute + second);
    }

    /** Reads these points every five minutes, from one minute to another, both included. */
    UnreadPoints reads(int from, int to, String... points) {
        for (int minute = from; minute <= to; minute += 5) {
            Instant now = at(minute, 0);
            posts(
                    now,
                    Stream.of(points)
                            .map(point -> new Reading("mesa-9", point, 5, now))
                            .toList());
        }
        return this;
    }

    /** The same in a post for each point, one after the other. */
    UnreadPoints readsSingly(int from, int to, String... points) {
        for (int minute = from; minute <= to; minute += 5) {
            for (int i = 0; i < points.length; i++) {
                Instant now = at(minute, i);
                posts(now, List.of(new Reading("mesa-9", points[i], 5, now)));
            }
        }
        return this;
    }

    private void posts(Instant now, List<Reading> readings) {
        day.at(now, new Stimulus.Measured("mesa-9-box", readings));
    }

    /** Beats in each of these minutes, twenty seconds after it began. */
    UnreadPoints beats(int from, int to) {
        for (int minute = from; minute <= to; minute++) {
            day.at(at(minute, 20), new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        }
        return this;
    }

    UnreadPoints acknowledged(int minute, String point) {
        day.at(at(minute, 0), new Stimulus.Acknowledge(missing(point), "ana", "page", Optional.empty()));
        return this;
    }

    UnreadPoints shelved(int minute, String point, Duration time) {
        day.at(at(minute, 0), new Stimulus.Shelve(missing(point), time, "sensor on order", "ana"));
        return this;
    }

    /** Somebody works on a point of the box that says nothing of itself. */
    UnreadPoints outOfService(int minute, String point) {
        List<String> others = ALL.stream().filter(id -> !id.equals(point)).toList();
        day.at(at(minute, 0), new Stimulus.SetupChanged(setup(Optional.empty(), others), "owner"));
        return this;
    }

    UnreadPoints until(int minute) {
        day.run(at(minute, 0));
        return this;
    }

    Alarm of(String point) {
        return day.picture().alarm(missing(point));
    }

    /** The points that are missed by now. */
    List<String> missed() {
        return ALL.stream().filter(point -> of(point).active()).toList();
    }

    /** Whether its silence is an alarm. */
    boolean silent() {
        return day.picture().alarm(BoxAlarms.silence("mesa-9")).active();
    }

    private static AlarmKey missing(String point) {
        return new AlarmKey("mesa-9", point, Conditions.MISSING);
    }
}
