package yardlight.gateway.reports;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.performance.Advice;
import yardlight.escalation.performance.Figure;
import yardlight.escalation.performance.Performance;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.wire.Spans;

/** Puts months of alarms into words. */
final class MonthSheets {

    private final Setup setup;
    private final Tongue tongue;
    private final Telling telling;

    MonthSheets(Setup setup, Tongue tongue, Clockface clock) {
        this.setup = setup;
        this.tongue = tongue;
        this.telling = new Telling(tongue, new Names(setup), clock);
    }

    MonthSheet of(MonthOfAlarms month) {
        Performance rated = month.performance();
        return new MonthSheet(
                month.month().format(DateTimeFormatter.ofPattern("LLLL uuuu", tongue.locale())),
                notes(month),
                tongue.say("reports.count", rated.announced(), rated.occurred()),
                month.rated().stream().map(this::row).toList(),
                month.advice().stream().map(this::advice).toList(),
                rated.frequent().stream().map(this::often).toList(),
                facts(rated));
    }

    private List<String> notes(MonthOfAlarms month) {
        var notes = new ArrayList<String>();
        if (!month.whole()) {
            notes.add(tongue.say("reports.not-whole"));
        }
        if (month.more()) {
            notes.add(tongue.say("reports.first-only", PerformanceReports.MOST));
        }
        return notes;
    }

    private MonthSheet.Row row(Figure.Rated rated) {
        String word = rated.figure().word();
        return new MonthSheet.Row(
                tongue.say("reports.figure." + word),
                value(rated.figure(), rated.value()),
                tongue.say("reports.target." + word),
                tongue.say(rated.met() ? "reports.met" : "reports.not-met"));
    }

    private String value(Figure figure, double value) {
        if (figure.part()) {
            return percent(value);
        }
        return figure == Figure.AVERAGE
                ? String.format(tongue.locale(), "%.2f", value)
                : Long.toString(Math.round(value));
    }

    private String percent(double part) {
        double percent = part * 100;
        boolean small = percent > 0 && percent < 10;
        return String.format(tongue.locale(), small ? "%.1f\u00A0%%" : "%.0f\u00A0%%", percent);
    }

    private String advice(Advice advice) {
        String delay = Spans.words(advice.effect().onDelay(), tongue);
        return tongue.say(
                "reports.advice",
                name(advice.frequent().key()),
                percent(advice.frequent().share()),
                delay,
                advice.effect().removed(),
                advice.effect().before());
    }

    private String name(AlarmKey key) {
        Names names = telling.names();
        return names.site(key.site()) + " " + names.point(key) + " " + telling.condition(key.condition());
    }

    private MonthSheet.Often often(Performance.Frequent one) {
        AlarmKey key = one.key();
        boolean read = setup.known(key.site(), key.point())
                .filter(point -> point.rules().limits().isPresent())
                .isPresent();
        return new MonthSheet.Often(
                name(key),
                one.count(),
                percent(one.share()),
                read ? "/sites/" + key.site() + "/points/" + key.point() + "/replay" : "");
    }

    private List<String> facts(Performance rated) {
        var facts = new ArrayList<String>();
        facts.add(tongue.say(
                "reports.answers", rated.answers().answered(), rated.answers().unanswered()));
        rated.answers()
                .median()
                .ifPresent(median -> facts.add(tongue.say(
                        "reports.times",
                        Stamps.length(median),
                        length(rated.answers().ninth()),
                        length(rated.answers().longest()))));
        if (!rated.priorities().isEmpty()) {
            facts.add(tongue.say("reports.priorities", priorities(rated.priorities())));
        }
        if (!rated.chattering().isEmpty()) {
            facts.add(tongue.say(
                    "reports.chatterers",
                    rated.chattering().stream().map(this::name).collect(Collectors.joining(", "))));
        }
        return facts;
    }

    private static String length(Optional<Duration> time) {
        return time.map(Stamps::length).orElse("");
    }

    private String priorities(Map<Priority, Double> parts) {
        return parts.entrySet().stream()
                .map(one -> telling.priority(one.getKey()) + " " + percent(one.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** The name of a month that stands alone. */
    static String month(String month, Locale locale) {
        return java.time.YearMonth.parse(month).format(DateTimeFormatter.ofPattern("LLLL uuuu", locale));
    }
}
