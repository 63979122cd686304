package yardlight.gateway.reports;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.Priority;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Reasons;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.paper.Paper;
import yardlight.gateway.setup.SetupInForce;

/** A notification report as a sheet: each alarm, then the head of the log and how it is used. */
final class NotificationPdf {

    private static final float[] TIMES = {30, 34, 22, 14};
    private static final float[] TOLD = {21, 13, 21, 21, 24};
    private static final float[] STORY = {27, 19, 45, 9};

    private final NotificationReport report;
    private final Tongue tongue;
    private final Telling telling;
    private final Paper paper;

    private NotificationPdf(NotificationReport report, Tongue tongue, SetupInForce inForce, Paper paper) {
        this.report = report;
        this.tongue = tongue;
        var clock = new Clockface(ZoneOffset.UTC, report.madeAt(), tongue.locale());
        this.telling = new Telling(tongue, new Names(inForce.setup()), clock);
        this.paper = paper;
    }

    /** The whole of it: half a report must not look like a whole one. */
    static byte[] of(NotificationReport report, Tongue tongue, SetupInForce inForce) {
        var bytes = new ByteArrayOutputStream();
        String foot = tongue.say("reports.foot", report.madeBy(), Stamps.utc(report.madeAt()));
        String title = tongue.say("reports.notification");
        try (Paper paper =
                Paper.on(bytes, title, tongue.locale(), foot, number -> tongue.say("reports.page", number))) {
            new NotificationPdf(report, tongue, inForce, paper).write();
        }
        return bytes.toByteArray();
    }

    private void write() {
        paper.title(tongue.say("reports.notification"));
        report.from().ifPresent(from -> paper.text(period(from)));
        if (report.more()) {
            paper.strong(tongue.say("reports.more", report.alarms().size()));
        }
        report.alarms().forEach(this::alarm);
        paper.heading(tongue.say("reports.what-it-is"));
        paper.text(tongue.say("reports.no-advice"));
        head();
    }

    private String period(Instant from) {
        String place = report.site().map(telling.names()::site).orElseGet(() -> tongue.say("reports.all-sites"));
        return tongue.count("reports.alarms", report.alarms().size()) + ". "
                + tongue.say(
                        "reports.period",
                        place,
                        Stamps.utc(from),
                        Stamps.utc(report.to().orElse(report.madeAt())));
    }

    private void alarm(Occurred one) {
        var stamps = new Stamps(ZoneId.of(one.zone()), tongue.locale());
        paper.heading(one.siteName() + ": " + one.name());
        paper.text(facts(one));
        paper.table(TIMES, names("reports.event", "reports.local", "reports.utc", "reports.after"), times(one, stamps));
        paper.strong(one.known()
                .flatMap(known -> one.eventToKnowledge()
                        .map(after -> tongue.say(
                                "reports.knew", Stamps.length(after), known.name(), deed(known), known.line() + "")))
                .orElseGet(() -> tongue.say("reports.nobody-knew", Stamps.utc(report.madeAt()))));
        told(one, stamps);
        if (!one.story().isEmpty()) {
            paper.heading(tongue.say("reports.story"));
            paper.table(
                    STORY, names("reports.local", "reports.utc", "reports.what", "reports.line"), story(one, stamps));
        }
    }

    private String facts(Occurred one) {
        var facts = new ArrayList<String>();
        facts.add(tongue.say(
                "reports.priority",
                Priority.of(one.priority()).map(telling::priority).orElse(one.priority())));
        String unit = one.unit().map(text -> " " + text).orElse("");
        one.value().ifPresent(value -> facts.add(value.toPlainString() + unit));
        one.limit().ifPresent(limit -> facts.add(tongue.say("limit", limit.toPlainString() + unit)));
        one.text().map(text -> Reasons.of(text, tongue)).ifPresent(facts::add);
        one.box().ifPresent(box -> facts.add(tongue.say("story.box", box)));
        facts.add(tongue.say("reports.id", one.alarm()));
        facts.add(tongue.say("reports.zone", one.zone()));
        return String.join("; ", facts);
    }

    private List<List<String>> times(Occurred one, Stamps stamps) {
        var rows = new ArrayList<List<String>>();
        time(rows, "reports.happened", one.happenedAt(), one, stamps);
        time(rows, "reports.received", one.receivedAt(), one, stamps);
        time(rows, "reports.first-handed-over", one.firstHandedOverAt(), one, stamps);
        if (one.firstDeliveredAt().isPresent()) {
            time(rows, "reports.first-delivered", one.firstDeliveredAt(), one, stamps);
        }
        time(rows, "reports.first-known", one.known().map(Answered::at), one, stamps);
        time(rows, "reports.returned", one.returnedAt(), one, stamps);
        return rows;
    }

    private void time(List<List<String>> rows, String what, Optional<Instant> at, Occurred one, Stamps stamps) {
        rows.add(List.of(
                tongue.say(what),
                at.map(stamps::local).orElseGet(() -> tongue.say("reports.none")),
                at.map(Stamps::utc).orElse(""),
                at.flatMap(then -> one.happenedAt().map(event -> Stamps.length(Duration.between(event, then))))
                        .orElse("")));
    }

    private String deed(Answered known) {
        return tongue.say(
                        "reports.deed." + known.deed(),
                        known.with().map(telling::condition).orElse(""))
                + known.way().map(telling::by).orElse("");
    }

    private void told(Occurred one, Stamps stamps) {
        paper.heading(tongue.say("reports.told"));
        List<ToldRow> rows = one.told().stream()
                .filter(row -> row.call() || row.triedAt().isPresent())
                .toList();
        if (rows.isEmpty()) {
            paper.text(tongue.say("reports.nobody-told"));
            return;
        }
        paper.table(
                TOLD,
                names("reports.person", "reports.path", "reports.handed-over", "reports.delivered", "reports.carrier"),
                rows.stream().map(row -> told(row, stamps)).toList());
    }

    private List<String> told(ToldRow row, Stamps stamps) {
        String path = row.channel().map(way -> telling.by(way).strip()).orElseGet(() -> tongue.say("reports.no-path"));
        String lines = row.lines().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return List.of(
                row.name() + (lines.isEmpty() ? "" : "\n" + tongue.say("reports.lines", lines)),
                path + (row.call() ? "" : "\n" + tongue.say("reports.news")),
                row.handedOverAt().map(stamps::both).orElseGet(() -> tongue.say("reports.none")),
                row.deliveredAt().map(stamps::both).orElseGet(() -> tongue.say("reports.not-said")),
                outcome(row, stamps));
    }

    private String outcome(ToldRow row, Stamps stamps) {
        String words = tongue.say("reports.outcome." + row.outcome());
        String when = row.handedOverAt().isPresent()
                ? ""
                : row.triedAt().map(at -> " " + stamps.local(at)).orElse("");
        return words + when + (row.detail().isEmpty() ? "" : ": " + row.detail());
    }

    /** What the log says; the rest of the story stands in the tables above. */
    private static List<List<String>> story(Occurred one, Stamps stamps) {
        return one.story().stream()
                .filter(moment -> moment.line().isPresent())
                .map(moment -> List.of(
                        stamps.local(moment.at()),
                        Stamps.utc(moment.at()),
                        moment.words(),
                        moment.line().map(String::valueOf).orElse("")))
                .toList();
    }

    private void head() {
        String json = report.head().json();
        paper.heading(tongue.say("reports.log"));
        paper.text(tongue.say(
                "reports.verify",
                report.head().first() + "",
                last() + "",
                report.head().at()));
        paper.exact(json);
        paper.attach("head.json", json.getBytes(StandardCharsets.UTF_8));
    }

    private long last() {
        return report.head().first() + report.head().size() - 1;
    }

    private List<String> names(String... keys) {
        return java.util.stream.Stream.of(keys).map(key -> tongue.say(key)).toList();
    }
}
