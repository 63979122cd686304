package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How well a box's deadline did in a month. An alarm was wrong if the box was back within one more interval after it and
 * did not say that it had started anew. Of boxes that were silent together only the one that was missed first
 * counts: the others were not found by their own deadline.
 *
 * @param month by the clock of the box's site, that in which the silence was found
 * @param silences alarms about its silence
 * @param wrong how many of them were wrong
 * @param found time from its last word to the alarm, on average
 */
public record BoxMonth(String box, YearMonth month, int silences, int wrong, Duration found) {

    private record Group(String box, YearMonth month) {}

    private record One(Group group, boolean wrong, Duration found) {}

    /**
     * Counts, newest month first, then by box.
     *
     * @param zones the zone of a site
     * @param intervals the interval of a box's heartbeats; empty when none are expected any more
     */
    public static List<BoxMonth> of(
            Collection<Absence> absences,
            Function<String, ZoneId> zones,
            Function<String, Optional<Duration>> intervals) {
        Map<Group, List<One>> groups = absences.stream()
                .flatMap(absence -> first(absence, zones, intervals).stream())
                .collect(Collectors.groupingBy(One::group));
        return groups.entrySet().stream()
                .map(group -> counted(group.getKey(), group.getValue()))
                .sorted(Comparator.comparing(BoxMonth::month).reversed().thenComparing(BoxMonth::box))
                .toList();
    }

    private static Optional<One> first(
            Absence absence, Function<String, ZoneId> zones, Function<String, Optional<Duration>> intervals) {
        Instant found = absence.foundAt();
        YearMonth month = YearMonth.from(found.atZone(zones.apply(absence.key().site())));
        return absence.members().entrySet().stream()
                .filter(member -> member.getValue().since().equals(absence.since()))
                .findFirst()
                .map(member -> new One(
                        new Group(member.getKey(), month),
                        !restarted(absence) && soon(member.getValue(), found, intervals.apply(member.getKey())),
                        Duration.between(absence.since(), found)));
    }

    private static boolean restarted(Absence absence) {
        var evidence = absence.judgement().evidence();
        return evidence.containsKey(Clue.RESTARTED) || evidence.containsKey(Clue.RESTARTED_ON_BATTERY);
    }

    private static boolean soon(Absence.Member member, Instant found, Optional<Duration> interval) {
        Optional<Instant> late = interval.map(found::plus);
        return late.isPresent()
                && member.back().filter(back -> !back.isAfter(late.get())).isPresent();
    }

    private static BoxMonth counted(Group group, List<One> ones) {
        Duration all = ones.stream().map(One::found).reduce(Duration.ZERO, Duration::plus);
        int wrong = (int) ones.stream().filter(One::wrong).count();
        return new BoxMonth(group.box(), group.month(), ones.size(), wrong, all.dividedBy(ones.size()));
    }
}
