package yardlight.demo.study;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import yardlight.demo.lease.Fault;
import yardlight.demo.lease.Lease;
import yardlight.demo.lease.LeaseDesign;
import yardlight.escalation.runtime.Comparison;
import yardlight.escalation.runtime.PumpRules;
import yardlight.escalation.runtime.RunTime;
import yardlight.escalation.runtime.Unusual;

/**
 * The run time of one lease's pump, read each five minutes and compared each hour, by several rules at once.
 *
 * @param told by which rules the pump ran less within ten days after a fault
 * @param falseCalls how often, by each rule, it ran less or more in the days without one
 */
record PumpTrial(Map<Fault, Set<Unusual>> told, Map<Unusual, Integer> falseCalls) {

    private static final Instant MIDNIGHT =
            LocalDateTime.parse("2026-01-05T00:00").atZone(StudySetup.ZONE).toInstant();
    private static final Duration OFTEN = Duration.ofMinutes(5);
    private static final int AN_HOUR = 12;
    private static final int DAY = 24;

    /** As in the trials of all the rules. */
    private static final int BEFORE = 10 * DAY;

    private static final int AFTER = 10 * DAY;

    static PumpTrial of(long seed, int quietDays, List<Unusual> rules) {
        Map<Fault, Set<Unusual>> told = new EnumMap<>(Fault.class);
        for (Fault fault : List.of(Fault.TUBING_LEAK, Fault.WELL_OFF)) {
            told.put(fault, after(fault, seed, rules));
        }
        return new PumpTrial(told, quiet(seed, quietDays, rules));
    }

    private static Set<Unusual> after(Fault fault, long seed, List<Unusual> rules) {
        var pump = new Pump(seed);
        pump.hours(BEFORE + new Random(seed * 31 + fault.ordinal()).nextInt(DAY));
        pump.lease.begin(fault);
        var told = new HashSet<Unusual>();
        for (int hour = 0; hour < AFTER; hour++) {
            pump.hours(1)
                    .ifPresent(now -> rules.stream()
                            .filter(rule -> now.share() < now.low(rule))
                            .forEach(told::add));
        }
        return told;
    }

    /** One that is unusual is called once, until it has come half the way back. */
    private static Map<Unusual, Integer> quiet(long seed, int days, List<Unusual> rules) {
        var pump = new Pump(seed);
        pump.hours(BEFORE);
        var calls = new HashMap<Unusual, Integer>();
        var called = new HashSet<Unusual>();
        for (int hour = 0; hour < days * DAY; hour++) {
            pump.hours(1)
                    .ifPresent(now -> rules.forEach(rule -> {
                        double off = Math.abs(now.share() - now.usual()) / (now.usual() - now.low(rule));
                        if (off > 1 && called.add(rule)) {
                            calls.merge(rule, 1, Integer::sum);
                        } else if (off < 0.5) {
                            called.remove(rule);
                        }
                    }));
        }
        return calls;
    }

    private static final class Pump {

        private final Lease lease;
        private RunTime runs = RunTime.NONE;

        Pump(long seed) {
            lease = new Lease(LeaseDesign.drawn(seed), seed);
        }

        /** Empty while there is too little to compare with. */
        Optional<Comparison> hours(int hours) {
            for (int reading = 0; reading < hours * AN_HOUR; reading++) {
                lease.step(OFTEN);
                Instant now = MIDNIGHT.plus(lease.passed());
                runs = runs.plus(now, lease.readings().pump(), StudySetup.ZONE, PumpRules.HOLD);
            }
            return runs.compared(StudySetup.ZONE, PumpRules.DAYS);
        }
    }
}
