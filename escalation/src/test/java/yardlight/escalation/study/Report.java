package yardlight.escalation.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import yardlight.escalation.heartbeat.Verdict;

/** The figures as tables, as they stand in docs/silence-study.md. */
final class Report {

    private static final int[] WIDTHS = {46, 14, 26, 22};

    private final List<String> lines = new ArrayList<>();
    private final List<Tally> tallies;

    private Report(List<Score> scores) {
        tallies = Study.RULES.stream().map(rules -> new Tally(scores, rules)).toList();
    }

    static String of(List<Score> scores) {
        var report = new Report(scores);
        report.figures();
        report.causes();
        for (int i = 0; i < Study.RULES.size(); i++) {
            report.matrix(Study.RULES.get(i).words(), report.tallies.get(i));
        }
        return String.join(System.lineSeparator(), report.lines);
    }

    /** One line for the table of what depends on what. */
    static String line(String what, List<Score> scores) {
        var tally = new Tally(scores, OurRules.OURS);
        return String.format(
                Locale.ROOT,
                "| %s | %.4f | %.4f | %.4f | %.4f | %.3f | %.3f |",
                what,
                tally.firstWhereDecided(),
                tally.wrong(),
                tally.lastRight(),
                tally.lastRightOrReboot(),
                tally.texts(),
                tally.falseAlarmsPerBoxMonth());
    }

    private void figures() {
        row("", Study.RULES.stream().map(Rules::words).toList());
        row("---", List.of("---", "---", "---"));
        figure("outages", "%.0f", Tally::outages);
        figure("over before anybody was told", "%.0f", tally -> tally.count(mark -> !mark.noticed()));
        figure("of power or path, decided by evidence", "%.0f", tally -> tally.count(Mark::decided));
        figure("first text right where evidence decides", "%.4f", Tally::firstWhereDecided);
        figure("first text wrong, of all outages told", "%.4f", Tally::wrong);
        figure("right in the end", "%.4f", Tally::lastRight);
        figure("same, possible reboot named counts", "%.4f", Tally::lastRightOrReboot);
        figure("texts to the first contact, one cause, mean", "%.3f", Tally::texts);
        figure("share with more than one", "%.4f", Tally::moreThanOneText);
        figure("texts, storms, mean", "%.3f", tally -> tally.texts(Cause.STORM));
        figure("minutes to the first text, median", "%.1f", tally -> tally.delay(0.5));
        figure("same, 95 of 100", "%.1f", tally -> tally.delay(0.95));
        figure("false alarms per box and month", "%.3f", Tally::falseAlarmsPerBoxMonth);
        figure("box-months without an outage played", "%.0f", Tally::boxMonths);
    }

    private void figure(String what, String form, ToDoubleFunction<Tally> figure) {
        row(
                what,
                tallies.stream()
                        .map(tally -> String.format(Locale.ROOT, form, figure.applyAsDouble(tally)))
                        .toList());
    }

    private void row(String what, List<String> cells) {
        var line = new StringBuilder("| ").append(pad(what, WIDTHS[0])).append(" |");
        for (int i = 0; i < cells.size(); i++) {
            line.append(' ').append(pad(cells.get(i), WIDTHS[i + 1])).append(" |");
        }
        lines.add(line.toString());
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void causes() {
        Tally ours = tallies.get(0);
        lines.add("");
        lines.add(
                "| Yardlight by cause | outages | told | first right where decided | first wrong | right in the end | texts |");
        lines.add("| --- | --- | --- | --- | --- | --- | --- |");
        for (Cause cause : Cause.values()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.4f | %.4f | %.4f | %.3f |",
                    cause.words,
                    ours.outages(cause),
                    ours.noticed(cause),
                    ours.firstWhereDecided(cause),
                    ours.wrong(cause),
                    ours.lastRight(cause),
                    ours.texts(cause)));
        }
    }

    private void matrix(String words, Tally tally) {
        lines.add("");
        lines.add(
                "| " + words
                        + ": truth | first: power-off | comms-loss | silent | not told | end: power-off | comms-loss | silent |");
        lines.add("| --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Truth truth : Truth.values()) {
            var line = new StringBuilder("| ")
                    .append(truth.name().toLowerCase(Locale.ROOT))
                    .append(" |");
            for (Verdict verdict : Verdict.values()) {
                line.append(' ')
                        .append(tally.first(truth, Optional.of(verdict)))
                        .append(" |");
            }
            line.append(' ').append(tally.first(truth, Optional.empty())).append(" |");
            for (Verdict verdict : Verdict.values()) {
                line.append(' ').append(tally.last(truth, verdict)).append(" |");
            }
            lines.add(line.toString());
        }
    }
}
