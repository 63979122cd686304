package yardlight.gateway.reports;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.document.CsvLine;

/** Months of alarms for a spreadsheet: a line for each figure. */
final class PerformanceCsv {

    private final StringBuilder text = new StringBuilder();

    private PerformanceCsv() {}

    static String of(List<MonthView> months) {
        var csv = new PerformanceCsv();
        csv.text.append(CsvLine.line(List.of("month", "figure", "about", "value", "target", "met")));
        months.forEach(csv::month);
        return csv.text.toString();
    }

    private void month(MonthView one) {
        String month = one.month();
        line(month, "whole", "", Boolean.toString(one.whole()));
        line(month, "occurred", "", one.occurred() + "");
        line(month, "announced", "", one.announced() + "");
        one.figures()
                .forEach(figure -> text.append(CsvLine.line(List.of(
                        month,
                        figure.figure(),
                        "",
                        figure.value().toPlainString(),
                        figure.target().toPlainString(),
                        Boolean.toString(figure.met())))));
        one.priorities().forEach((priority, part) -> line(month, "priority", priority, part.toPlainString()));
        line(month, "answered", "", one.answers().answered() + "");
        line(month, "unanswered", "", one.answers().unanswered() + "");
        seconds(month, "seconds-to-acknowledge-median", one.answers().median());
        seconds(month, "seconds-to-acknowledge-nine-of-ten", one.answers().nineOfTen());
        seconds(month, "seconds-to-acknowledge-longest", one.answers().longest());
        one.chattering().forEach(key -> line(month, "chatters", about(key.site(), key.point(), key.condition()), "1"));
        for (MonthView.FrequentView frequent : one.frequent()) {
            String about = about(frequent.site(), frequent.point(), frequent.condition());
            line(month, "frequent", about, frequent.count() + "");
            frequent.onDelays()
                    .forEach(delay -> line(
                            month,
                            "removed-by-on-delay-" + delay.onDelay().toSeconds() + "-s",
                            about,
                            delay.removed() + ""));
        }
    }

    private void seconds(String month, String figure, Optional<Duration> time) {
        time.ifPresent(one -> line(month, figure, "", one.toSeconds() + ""));
    }

    private static String about(String site, String point, String condition) {
        return site + "/" + point + "/" + condition;
    }

    private void line(String month, String figure, String about, String value) {
        text.append(CsvLine.line(List.of(month, figure, about, value, "", "")));
    }
}
