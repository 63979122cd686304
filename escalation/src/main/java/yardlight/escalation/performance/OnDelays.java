package yardlight.escalation.performance;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;

/**
 * What a longer on-delay would have made of the occurrences of one alarm: they are reported anew, one after the other, to the
 * rules that alarms go by, and whoever is called answers at once, so that each call is counted.
 */
public final class OnDelays {

    /** "A few seconds to about a minute" is usual, and one that is long; EEMUA 191 and ISA-18.2 as commonly quoted. */
    private static final List<Duration> TRIED =
            List.of(Duration.ofSeconds(20), Duration.ofMinutes(1), Duration.ofMinutes(5));

    private static final Optional<String> BOX = Optional.of("-replay");

    /**
     * What one on-delay does.
     *
     * @param before occurrences with the delay as it is
     * @param removed how many of those it would have taken away
     */
    public record Effect(Duration onDelay, int before, int removed) {}

    private record Step(Instant at, boolean active) {}

    private OnDelays() {}

    /**
     * Tries the usual ones that are longer than the one that is.
     *
     * @param alarms of one alarm, in any order
     * @param asIs its timing now; latching does not count
     * @return the shortest first; empty when the alarm has none that would do anything
     */
    public static List<Effect> of(List<PastAlarm> alarms, Timing asIs) {
        int before = count(alarms, asIs, asIs.onDelay());
        return TRIED.stream()
                .filter(delay -> delay.compareTo(asIs.onDelay()) > 0)
                .map(delay -> new Effect(delay, before, before - count(alarms, asIs, delay)))
                .filter(effect -> effect.removed() > 0)
                .toList();
    }

    /** How often the alarm would have occurred. */
    static int count(List<PastAlarm> alarms, Timing asIs, Duration onDelay) {
        var timing = new Timing(onDelay, asIs.offDelay(), false, Optional.empty(), asIs.nuisance());
        List<Step> steps = steps(alarms);
        if (steps.isEmpty()) {
            return 0;
        }
        AlarmKey key = alarms.get(0).key();
        Alarm alarm = Alarm.normal(key);
        Instant last = steps.get(steps.size() - 1).at();
        for (Step step : steps) {
            var report = new Report(key, BOX, step.active(), Optional.empty(), Measured.NOTHING, step.at(), false);
            alarm = answered(AlarmRules.report(alarm, report, timing, Priority.MEDIUM, step.at()), timing, step.at());
        }
        Instant end = last.plus(onDelay);
        return answered(AlarmRules.due(alarm, timing, end), timing, end).occurrence();
    }

    private static Alarm answered(AlarmRules.Step step, Timing timing, Instant at) {
        Alarm alarm = step.alarm();
        return AlarmRules.acknowledge(alarm, "replay", timing, at)
                .map(AlarmRules.Step::alarm)
                .orElse(alarm);
    }

    private static List<Step> steps(List<PastAlarm> alarms) {
        var steps = new ArrayList<Step>();
        alarms.stream().sorted(Comparator.comparing(PastAlarm::at)).forEach(alarm -> {
            steps.add(new Step(alarm.at(), true));
            alarm.over().ifPresent(over -> steps.add(new Step(over, false)));
        });
        // Stable, and an end before the beginning that follows in the same moment.
        steps.sort(Comparator.comparing(Step::at));
        return steps;
    }
}
