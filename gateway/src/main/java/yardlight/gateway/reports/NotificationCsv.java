package yardlight.gateway.reports;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yardlight.gateway.document.CsvLine;

/** A notification report for a spreadsheet: a line for each thing that happened, in words that do not change with the language. */
final class NotificationCsv {

    private static final List<String> NAMES = List.of(
            "what",
            "utc",
            "local",
            "zone",
            "secondsAfterEvent",
            "alarm",
            "site",
            "siteName",
            "point",
            "condition",
            "priority",
            "contact",
            "name",
            "path",
            "purpose",
            "outcome",
            "detail",
            "logLines");

    private final StringBuilder text = new StringBuilder();

    private NotificationCsv() {}

    static String of(NotificationReport report) {
        var csv = new NotificationCsv();
        csv.text.append(CsvLine.line(NAMES));
        report.alarms().forEach(csv::alarm);
        csv.about("note", report.madeAt(), "A record, not legal advice. Sent or delivered does not mean read.");
        if (report.more()) {
            csv.about("more", report.madeAt(), "There are more alarms in this period: these are the newest.");
        }
        csv.about("log-head", report.madeAt(), report.head().json());
        return csv.text.toString();
    }

    private void alarm(Occurred one) {
        var rows = new ArrayList<Row>();
        one.happenedAt().ifPresent(at -> rows.add(new Row("happened", at)));
        one.receivedAt().ifPresent(at -> rows.add(new Row("received", at)));
        one.told().forEach(told -> told(rows, told));
        one.known().ifPresent(known -> rows.add(new Row("first-known", known.at()).of(known)));
        one.answers().forEach(answer -> rows.add(new Row(answer.deed(), answer.at()).of(answer)));
        one.returnedAt().ifPresent(at -> rows.add(new Row("returned", at)));
        // Stable: what happened in the same moment stays in this order.
        rows.sort(Comparator.comparing(row -> row.at));
        rows.forEach(row -> text.append(CsvLine.line(row.cells(one))));
    }

    private static void told(List<Row> rows, ToldRow told) {
        String what = told.call() ? "call" : "news";
        if (told.triedAt().isEmpty()) {
            rows.add(new Row("not-tried", told.queuedAt()).of(told));
        }
        told.triedAt().ifPresent(at -> rows.add(new Row(what, at).of(told)));
        told.deliveredAt().ifPresent(at -> rows.add(new Row("delivered", at).of(told)));
    }

    private void about(String what, Instant at, String detail) {
        var cells = new String[NAMES.size()];
        Arrays.fill(cells, "");
        cells[0] = what;
        cells[1] = at.toString();
        cells[NAMES.indexOf("detail")] = detail;
        text.append(CsvLine.line(List.of(cells)));
    }

    /** One line while it is made. */
    private static final class Row {

        private final String what;
        private final Instant at;
        private List<String> rest = List.of("", "", "", "", "", "", "");

        private Row(String what, Instant at) {
            this.what = what;
            this.at = at;
        }

        private Row of(ToldRow told) {
            String lines = told.lines().stream().map(String::valueOf).collect(Collectors.joining(" "));
            rest = List.of(
                    told.contact(),
                    told.name(),
                    told.channel().orElse(""),
                    told.purpose(),
                    told.outcome(),
                    told.detail(),
                    lines);
            return this;
        }

        private Row of(Answered answer) {
            rest = List.of(
                    answer.by(),
                    answer.name(),
                    answer.way().orElse(""),
                    "",
                    answer.deed(),
                    answer.with().orElse(""),
                    answer.line() + "");
            return this;
        }

        private List<String> cells(Occurred one) {
            Optional<String> after = one.happenedAt()
                    .map(event -> Long.toString(Duration.between(event, at).toSeconds()));
            var cells = new ArrayList<>(List.of(
                    what,
                    at.truncatedTo(ChronoUnit.MILLIS).toString(),
                    new Stamps(ZoneId.of(one.zone()), Locale.ENGLISH).local(at),
                    one.zone(),
                    after.orElse(""),
                    one.alarm(),
                    one.site(),
                    one.siteName(),
                    one.point(),
                    one.condition(),
                    one.priority()));
            cells.addAll(rest);
            return cells;
        }
    }
}
