package yardlight.demo.study;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import yardlight.demo.lease.Lease;
import yardlight.demo.lease.LeaseDesign;
import yardlight.demo.lease.Readings;
import yardlight.escalation.Changes;
import yardlight.escalation.Escalator;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Happening;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.wording.Links;

/**
 * A lease whose box posts its readings each minute and a heartbeat each five to the engine. One post of a hundred gets
 * lost. Ana takes every text and answers after ten minutes; nobody mends anything.
 */
final class WatchedLease {

    static final Duration MINUTE = Duration.ofMinutes(1);

    private static final Instant MIDNIGHT =
            LocalDateTime.parse("2026-01-05T00:00").atZone(StudySetup.ZONE).toInstant();
    static final Duration ANSWERS = Duration.ofMinutes(10);
    private static final double LOST = 0.01;

    private final LeaseDesign design;
    private final long seed;
    private final Lease lease;
    private final Simulation simulation;
    private final Random link;
    private final List<Heard> heard = new ArrayList<>();
    private final Set<String> called = new HashSet<>();
    private final List<Duration> calls = new ArrayList<>();
    private final Map<String, Duration> begun = new LinkedHashMap<>();
    private final Map<Gauge.Key, Gauge> gauges = new LinkedHashMap<>();
    private Duration every = MINUTE;

    WatchedLease(LeaseDesign design, long seed) {
        this.design = design;
        this.seed = seed;
        lease = new Lease(design, seed);
        link = new Random(~seed);
        var code = new AtomicInteger(11);
        simulation = new Simulation(StudySetup.of(design), new Escalator(Links.NONE, code::getAndIncrement));
        simulation.watch(this::see);
    }

    /**
     * The same lease at the same time, with everything that is remembered of its readings and no alarm: as often as it is
     * asked for, so that a lease has to be got to know only once.
     */
    WatchedLease again() {
        var again = new WatchedLease(design, seed);
        again.lease.step(lease.passed());
        again.gauges.putAll(gauges);
        again.simulation.picture().apply(Changes.gauged(List.copyOf(gauges.values())));
        return again;
    }

    /** From now on the box posts its readings so often, in whole minutes. */
    void post(Duration often) {
        every = often;
    }

    Lease lease() {
        return lease;
    }

    /** The first text of each callout, in order. */
    List<Heard> heard() {
        return List.copyOf(heard);
    }

    /** When a text called somebody, each of them. */
    List<Duration> calls() {
        return List.copyOf(calls);
    }

    /** When an alarm began, each of them. */
    List<Duration> begun() {
        return List.copyOf(begun.values());
    }

    void step() {
        lease.step(MINUTE);
        Instant now = MIDNIGHT.plus(lease.passed());
        Readings readings = lease.readings();
        if (lease.passed().toMinutes() % every.toMinutes() == 0 && link.nextDouble() >= LOST) {
            simulation.at(now, measured(readings, now));
        }
        if (lease.passed().toMinutes() % 5 == 0) {
            var heartbeat = new Heartbeat(
                    Optional.empty(), readings.feeds(), Optional.empty(), Optional.empty(), Optional.empty());
            simulation.at(now, new Stimulus.Beat(StudySetup.BOX, heartbeat));
        }
        simulation.run(now);
    }

    void step(Duration length) {
        Duration end = lease.passed().plus(length);
        while (lease.passed().compareTo(end) < 0) {
            step();
        }
    }

    private static Stimulus measured(Readings readings, Instant at) {
        return new Stimulus.Measured(
                StudySetup.BOX,
                List.of(
                        reading(StudySetup.PUMP, readings.pump() ? 1 : 0, at),
                        reading(StudySetup.WATER, readings.water(), at),
                        reading(StudySetup.OIL, readings.oil(), at),
                        reading(StudySetup.SEPARATOR, readings.separator(), at),
                        reading(StudySetup.INJECTION, readings.injection(), at)));
    }

    private static Reading reading(String point, double value, Instant at) {
        return new Reading(StudySetup.SITE, point, value, at);
    }

    private void see(Happening happening) {
        happening.decision().changes().gauges().forEach(gauge -> gauges.put(gauge.key(), gauge));
        happening.decision().changes().alarms().stream()
                .filter(Alarm::active)
                .forEach(alarm -> begun.putIfAbsent(alarm.id(), Duration.between(MIDNIGHT, happening.at())));
        happening.decision().changes().notices().stream()
                .filter(notice -> notice.state() == NoticeState.QUEUED)
                .forEach(notice -> take(notice, happening.at()));
    }

    private void take(Notice notice, Instant at) {
        simulation.at(at, new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"));
        if (notice.purpose() != Purpose.CALL) {
            return;
        }
        calls.add(Duration.between(MIDNIGHT, at));
        simulation.at(at.plus(ANSWERS), new Stimulus.AnswerNotice(notice.id(), "link"));
        if (called.addAll(notice.callouts())) {
            var alarms = notice.callouts().stream()
                    .flatMap(id -> simulation.picture().callout(id).stream())
                    .flatMap(callout -> callout.facts().alarms().stream())
                    .toList();
            heard.add(new Heard(Duration.between(MIDNIGHT, at), alarms, notice.text()));
        }
    }
}
