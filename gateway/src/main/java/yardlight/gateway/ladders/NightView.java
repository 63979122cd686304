package yardlight.gateway.ladders;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Optional;
import yardlight.escalation.rehearsal.PastCall;
import yardlight.escalation.rehearsal.PastText;
import yardlight.escalation.rehearsal.Season;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.ladders.NightsSheet.Choice;
import yardlight.gateway.ladders.NightsSheet.Night;
import yardlight.gateway.ladders.NightsSheet.Row;
import yardlight.gateway.ladders.NightsSheet.Side;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.stage.Seasons;

/** How one night of a season reads, by the clock of a site. */
record NightView(Seasons.Compared compared, ZoneId zone, Clockface clock, Tongue tongue) {

    /** What happens in one moment: an alarm, then the texts about it, then the answer. */
    private record Line(Instant at, int order, String words) {

        static final Comparator<Line> IN_ORDER = Comparator.comparing(Line::at).thenComparing(Line::order);
    }

    Choice choice(LocalDate evening, Optional<LocalDate> shown) {
        return new Choice(
                evening.toString(),
                tongue.say("nights.choice", clock.readInWeek(evening), texts(within(compared.really(), evening))),
                shown.equals(Optional.of(evening)));
    }

    Night night(LocalDate evening) {
        Instant end = NightsSheets.noon(evening.plusDays(1), zone);
        return new Night(
                clock.readInWeek(evening),
                side(within(compared.really(), evening), end),
                side(within(compared.would(), evening), end));
    }

    /** What comes after the night, such as a late answer, is told with its day. */
    private String time(Instant at, Instant end) {
        return at.isBefore(end) ? clock.time(at) : clock.readWithDay(at);
    }

    private Season within(Season season, LocalDate evening) {
        return season.within(NightsSheets.noon(evening, zone), NightsSheets.noon(evening.plusDays(1), zone));
    }

    private Side side(Season season, Instant end) {
        var names = new Names(compared.setup());
        var lines = new ArrayList<Line>();
        season.calls().forEach(call -> {
            lines.add(new Line(call.at(), 0, alarm(call, names)));
            call.answeredAt()
                    .ifPresent(at -> lines.add(new Line(
                            at,
                            2,
                            tongue.say(
                                    "nights.answered",
                                    names.contact(call.by().orElseThrow()),
                                    names.point(call.key()) + " " + call.key().condition()))));
        });
        season.texts().forEach(text -> lines.add(new Line(text.at(), 1, told(text, names))));
        lines.sort(Line.IN_ORDER);
        return new Side(
                summary(season),
                lines.stream()
                        .map(line -> new Row(time(line.at(), end), line.words(), line.order() == 0))
                        .toList());
    }

    private String summary(Season season) {
        long open =
                season.calling().stream().filter(call -> call.by().isEmpty()).count();
        Optional<Duration> longest = season.calling().stream()
                .flatMap(call -> call.waited().stream())
                .max(Comparator.naturalOrder());
        String waited =
                longest.map(wait -> tongue.say("nights.waited", length(wait))).orElse("");
        String unanswered = open == 0 ? "" : tongue.count("nights.open", open);
        return texts(season) + waited + unanswered;
    }

    /** Mails are counted apart, as they are of the whole time. */
    private String texts(Season season) {
        long mails = season.texts().stream().filter(PastText::mail).count();
        return tongue.count("nights.count", season.texts().size() - mails)
                + (mails == 0 ? "" : tongue.count("nights.countmails", mails));
    }

    private String alarm(PastCall call, Names names) {
        String alarm = names.site(call.key().site()) + " " + names.point(call.key()) + " "
                + call.key().condition();
        return call.calls() ? alarm : tongue.say("nights.silent", alarm);
    }

    private String told(PastText text, Names names) {
        return tongue.say(
                "ladders.line.told", names.contact(text.contact()), RehearsalSheet.channel(text.channel(), tongue));
    }

    /** To the second below a minute, to the minute above it. */
    static String length(Duration length) {
        return Telling.length(
                length.compareTo(Duration.ofMinutes(1)) < 0
                        ? Duration.ofSeconds(length.toSeconds())
                        : Duration.ofMinutes(length.plusSeconds(30).toMinutes()));
    }
}
