package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.Unusual;
import yardlight.escalation.setup.Equipment;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.tank.TankRules;
import yardlight.escalation.tank.Upright;
import yardlight.escalation.trend.FallRules;
import yardlight.escalation.wording.Links;

/**
 * A tank of 12 by 20 ft that wells fill and a pump with a float switch empties, minute by minute, with the engine reading along.
 * Small on purpose: it has the few faults that the tests of the rules need.
 */
final class SmallLease {

    static final Instant START = Fixtures.at("2026-11-02T00:00");
    private static final double BARREL = 9702.0 / 1728;
    private static final double AREA = Math.PI * 36;

    final Simulation night;
    /** What a fault changes. */
    double inflow = 12;

    double pumped = 30;
    boolean startsAt14 = true;
    double line = 30;
    double injection = 800;
    boolean signal = true;
    boolean gauged = true;

    private final SplittableRandom random;
    private double level = 12;
    private boolean running;
    private int minute;

    SmallLease(long seed) {
        this(seed, setup());
    }

    /** One whose owner has turned it on that it may be asked to shut in. */
    SmallLease(long seed, Terms terms) {
        this(seed, setup(Fixtures.aSite().withShutIn(terms)));
        night.at(START, new Stimulus.ShutIn("mesa-9", new ShutInSaid.TurnedOn(terms.words(), "owner")));
    }

    private SmallLease(long seed, Setup setup) {
        random = new SplittableRandom(seed);
        var codes = new ArrayList<Integer>();
        night = new Simulation(setup, new Escalator(Links.NONE, () -> {
            codes.add(1);
            return 46 + codes.size();
        }));
        night.watch(happening -> happening.decision().changes().notices().stream()
                .filter(notice -> notice.state() == NoticeState.QUEUED)
                .forEach(notice -> night.at(
                        happening.at(),
                        new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"))));
    }

    static Setup setup() {
        return setup(Fixtures.aSite());
    }

    private static Setup setup(Site site) {
        Setup all = Fixtures.theSetup();
        var pump = new PumpRules(
                0.5,
                PumpRules.HOLD,
                Optional.of("water-tank"),
                Optional.of("injection-line"),
                Unusual.USUAL,
                PumpRules.DAYS);
        Equipment tank =
                new Equipment(Optional.of(new TankRules(new Upright(12, 20))), Optional.empty(), Optional.empty());
        Equipment leak = new Equipment(Optional.empty(), Optional.empty(), Optional.of(FallRules.USUAL));
        return new Setup(
                Stream.concat(
                                Stream.of(site),
                                all.sites().values().stream()
                                        .filter(other -> !other.id().equals(site.id())))
                        .toList(),
                List.of(Fixtures.aBox()),
                List.of(
                        Point.unknown("water-tank", "mesa-9").with(tank),
                        point("injection-pump", new Equipment(Optional.empty(), Optional.of(pump), Optional.empty())),
                        point("separator", leak),
                        point("injection-line", leak)),
                List.copyOf(all.contacts().values()),
                List.copyOf(all.rosters().values()),
                List.copyOf(all.ladders().values()));
    }

    /** As urgent as gets through quiet hours. */
    private static Point point(String id, Equipment equipment) {
        String name = id.toUpperCase(Locale.ROOT).replace('-', ' ');
        return new Point(id, "mesa-9", name, Optional.empty(), Optional.of(Priority.HIGH), Timing.PLAIN, Set.of(), true)
                .with(equipment);
    }

    /** Until the pump runs. */
    SmallLease playToTheTop() {
        while (!running) {
            play(Duration.ofMinutes(1));
        }
        return this;
    }

    /** Until the pump has just been switched off. */
    SmallLease playToTheBottom() {
        playToTheTop();
        while (running) {
            play(Duration.ofMinutes(1));
        }
        return this;
    }

    /** What the site is asked, or was asked last. */
    Optional<Request> request() {
        return night.picture().standing("mesa-9").request();
    }

    /** Lets so much time go by, with a reading of everything each minute. */
    SmallLease play(Duration length) {
        for (long end = minute + length.toMinutes(); minute < end; minute++) {
            step();
            Instant now = START.plus(Duration.ofMinutes(minute));
            night.at(now, new Stimulus.Measured("mesa-9-box", readings(now)));
            night.run(now);
        }
        return this;
    }

    private void step() {
        if (level >= 14 && startsAt14) {
            running = true;
        } else if (level <= 12 && running) {
            running = false;
        }
        double slug = random.nextInt(10) == 0 ? 3 : 0.78;
        double in = inflow * slug / 60;
        double out = running ? pumped / 60 : 0;
        level = Math.max(0, Math.min(20, level + (in - out) * BARREL / AREA));
    }

    private List<Reading> readings(Instant now) {
        var readings = new ArrayList<Reading>();
        if (gauged) {
            readings.add(new Reading("mesa-9", "water-tank", Math.rint((level + noise(0.03)) * 100) / 100, now));
        }
        if (signal) {
            readings.add(new Reading("mesa-9", "injection-pump", running ? 1 : 0, now));
        }
        readings.add(new Reading("mesa-9", "separator", line + noise(0.8), now));
        readings.add(new Reading("mesa-9", "injection-line", (running ? injection : 400) + noise(6), now));
        return readings;
    }

    private double noise(double most) {
        return most * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5);
    }

    double level() {
        return level;
    }

    /** Minutes since the beginning. */
    int minute() {
        return minute;
    }

    Alarm alarm(String point, String condition) {
        return night.picture().alarm(new AlarmKey("mesa-9", point, condition));
    }

    /** Of everything that ever was one, at this point or another. */
    List<String> alarms() {
        return night.picture().alarms().stream()
                .filter(alarm -> alarm.occurrence() > 0)
                .map(alarm -> alarm.key().local())
                .toList();
    }

    List<String> texts() {
        return night.picture().notices().stream()
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .map(Notice::text)
                .toList();
    }
}
