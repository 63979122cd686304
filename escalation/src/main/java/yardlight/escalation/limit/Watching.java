package yardlight.escalation.limit;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.reading.Reading;

/** Holds the readings of a point against its rules: what was remembered and a reading in, what is remembered and found out. */
public final class Watching {

    /**
     * @param gauge as it is now
     * @param findings the worst first
     */
    public record Step(Gauge gauge, List<Finding> findings) {
        public Step {
            findings = List.copyOf(findings);
        }
    }

    private Watching() {}

    /**
     * Takes a reading. One that is not newer than the newest says nothing of what is now.
     *
     * @param box that read it
     * @param now when it arrived
     */
    public static Step take(Gauge before, Rules rules, String box, Reading reading, Instant now) {
        boolean measured = rules.current()
                .filter(loop -> !Loop.measures(reading.value(), loop))
                .isEmpty();
        boolean late = before.readAt().filter(at -> !reading.at().isAfter(at)).isPresent();
        if (late) {
            return new Step(measured ? before.late(reading) : before, List.of());
        }
        Gauge heard = before.heard(box, reading.at(), now, rules.missing());
        Gauge gauge = measured ? heard.measured(reading) : heard;
        var round = new Round(gauge, before.newest(), reading.value(), reading.at());
        rules.current().ifPresent(loop -> Loop.look(round, loop));
        if (measured) {
            rules.limits().ifPresent(limits -> Levels.look(round, limits));
            rules.change().ifPresent(change -> Speed.look(round, change, deadband(rules)));
            rules.drift().ifPresent(drift -> Sums.look(round, drift));
            rules.stuck().ifPresent(after -> Stillness.look(round, after));
        }
        round.say(Conditions.MISSING, false);
        return round.done();
    }

    private static BigDecimal deadband(Rules rules) {
        return rules.limits().map(Limits::deadband).orElse(BigDecimal.ZERO);
    }

    /** The time is up and no reading came, although its box could have sent one. */
    public static Step missing(Gauge before, Instant now) {
        var round = new Round(before.with(Optional.empty(), false), before.newest(), 0, now);
        round.say(Conditions.MISSING, true);
        return round.done();
    }

    /**
     * Nothing can be said of missing readings yet.
     *
     * @param excused whether that is because the box sends nothing at all
     */
    public static Gauge postponed(Gauge before, Instant until, boolean excused) {
        return before.with(Optional.of(until), excused);
    }

    /** No reading is expected any more. */
    public static Gauge unexpected(Gauge before) {
        return before.with(Optional.empty(), false);
    }

    /** Other rules hold: what nobody asks for any more is over, and the newest measurement is held against the new limits. */
    public static Step changed(Gauge before, Rules old, Rules rules, Instant now) {
        Optional<Instant> deadline = before.holds(Conditions.MISSING)
                ? before.deadline()
                : rules.missing().flatMap(span -> before.heardAt().map(at -> at.plus(span)));
        Gauge gauge = before.with(deadline, before.excused());
        if (!old.drift().equals(rules.drift())) {
            gauge = gauge.noting(Sums.NAME, List.of());
        }
        if (!old.change().equals(rules.change())) {
            gauge = gauge.noting(Speed.NAME, List.of());
        }
        double value = before.newest().map(Reading::value).orElse(0.0);
        var round = new Round(gauge, before.newest(), value, now);
        for (String condition : new ArrayList<>(gone(before, old, rules))) {
            round.say(condition, false);
        }
        if (before.newest().isPresent()) {
            rules.limits().ifPresent(limits -> Levels.look(round, limits));
        }
        return round.done();
    }

    private static List<String> gone(Gauge gauge, Rules old, Rules rules) {
        return gauge.holding().stream()
                .filter(Conditions.ALL::contains)
                .filter(condition -> !asked(condition, old, rules))
                .toList();
    }

    /** Whether the rule that found it still is what it was, or can judge anew at once. */
    private static boolean asked(String condition, Rules old, Rules rules) {
        return switch (condition) {
            case Conditions.HIGH_HIGH ->
                rules.limits().flatMap(Limits::highHigh).isPresent();
            case Conditions.HIGH -> rules.limits().flatMap(Limits::high).isPresent();
            case Conditions.LOW -> rules.limits().flatMap(Limits::low).isPresent();
            case Conditions.LOW_LOW -> rules.limits().flatMap(Limits::lowLow).isPresent();
            case Conditions.RISING -> rules.change().flatMap(Change::rise).isPresent();
            case Conditions.FALLING -> rules.change().flatMap(Change::fall).isPresent();
            case Conditions.DRIFT -> rules.drift().isPresent() && old.drift().equals(rules.drift());
            case Conditions.STUCK -> rules.stuck().isPresent();
            case Conditions.MISSING -> rules.missing().isPresent();
            default -> rules.current().isPresent();
        };
    }
}
