package yardlight.demo.study;

import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import yardlight.demo.lease.Fault;

/** Puts the results of trials into the tables of docs/lease-study.md. */
final class StudyTable {

    private static final String HEAD = """
        | fault | told | first by | minutes to the text | ran over | minutes left | switch: minutes to trip | minutes left |
        | --- | --- | --- | --- | --- | --- | --- | --- |
        """;

    private StudyTable() {}

    static String of(List<Trial> trials) {
        return HEAD
                + Arrays.stream(Fault.values())
                        .filter(fault -> !with(trials, fault).isEmpty())
                        .map(fault -> row(fault, with(trials, fault)))
                        .collect(Collectors.joining("\n"));
    }

    /** How many alarms a fault was, and how many texts. */
    static String texts(List<Trial> trials) {
        return """
                | fault | alarms within 12 h | texts until answered | texts within 12 h |
                | --- | --- | --- | --- |
                """
                + Arrays.stream(Fault.values())
                        .map(fault -> with(trials, fault).stream()
                                .filter(trial -> trial.detected().isPresent())
                                .toList())
                        .filter(told -> !told.isEmpty())
                        .map(told -> "| "
                                + String.join(
                                        " | ",
                                        told.get(0).fault().words(),
                                        counts(told, Trial::alarms),
                                        counts(told, trial -> (int) trial.untilAnswered()),
                                        counts(told, trial -> trial.calls().size()))
                                + " |")
                        .collect(Collectors.joining("\n"));
    }

    /** Of each lease, in their order. */
    private static String counts(List<Trial> trials, ToIntFunction<Trial> count) {
        return trials.stream()
                .map(trial -> String.valueOf(count.applyAsInt(trial)))
                .collect(Collectors.joining(", "));
    }

    private static List<Trial> with(List<Trial> trials, Fault fault) {
        return trials.stream().filter(trial -> trial.fault() == fault).toList();
    }

    private static String row(Fault fault, List<Trial> trials) {
        long told =
                trials.stream().filter(trial -> trial.detected().isPresent()).count();
        long over =
                trials.stream().filter(trial -> trial.overflowed().isPresent()).count();
        return "| "
                + String.join(
                        " | ",
                        fault.words(),
                        told + " of " + trials.size(),
                        firsts(trials),
                        minutes(trials, Trial::detected),
                        over == 0 ? "never" : over + " of " + trials.size(),
                        minutes(trials, Trial::left),
                        minutes(trials, Trial::tripped),
                        minutes(trials, Trial::leftBySwitch))
                + " |";
    }

    /** By which alarms the first text was, the most frequent first. */
    private static String firsts(List<Trial> trials) {
        Map<String, Long> count = trials.stream()
                .flatMap(trial -> trial.heard().stream().findFirst().stream())
                .collect(Collectors.groupingBy(Heard::first, LinkedHashMap::new, Collectors.counting()));
        return count.isEmpty()
                ? "-"
                : count.entrySet().stream()
                        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                        .map(one -> one.getKey().replace('/', ' ') + (count.size() > 1 ? " " + one.getValue() : ""))
                        .collect(Collectors.joining(", "));
    }

    /** The median, and from where to where. */
    private static String minutes(List<Trial> trials, Function<Trial, Optional<Duration>> what) {
        long[] all = trials.stream()
                .flatMap(trial -> what.apply(trial).stream())
                .mapToLong(Duration::toMinutes)
                .sorted()
                .toArray();
        if (all.length == 0) {
            return "-";
        }
        String middle = String.format(Locale.ROOT, "%,d", all[(all.length - 1) / 2]);
        return all.length == 1
                ? middle
                : String.format(Locale.ROOT, "%s (%,d to %,d)", middle, all[0], all[all.length - 1]);
    }
}
