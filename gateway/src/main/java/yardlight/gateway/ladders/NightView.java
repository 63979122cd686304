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
        int texts = within(compared.really(), evening).texts().size();
        return new Choice(
                evening.toString(),
                tongue.say("nights.choice", clock.readInWeek(evening), tongue.count("nights.count", texts)),
                shown.equals(Optional.of(evening)));
    }

    Night night(LocalDate evening) {
        return new Night(
                clock.readInWeek(evening),
                side(within(compared.really(), evening)),
                side(within(compared.would(), evening)));
    }

    private Season within(Season season, LocalDate evening) {
        return season.within(NightsSheets.noon(evening, zone), NightsSheets.noon(evening.plusDays(1), zone));
    }

    private Side side(Season season) {
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
                        .map(line -> new Row(clock.time(line.at()), line.words(), line.order() == 0))
                        .toList());
    }

    private String summary(Season season) {
        String texts = tongue.count("nights.count", season.texts().size());
        long open = season.calls().stream().filter(call -> call.by().isEmpty()).count();
        Optional<Duration> longest =
                season.calls().stream().flatMap(call -> call.waited().stream()).max(Comparator.naturalOrder());
        String waited =
                longest.map(wait -> tongue.say("nights.waited", length(wait))).orElse("");
        String unanswered = open == 0 ? "" : tongue.count("nights.open", open);
        return texts + waited + unanswered;
    }

    private String alarm(PastCall call, Names names) {
        return names.site(call.key().site()) + " " + names.point(call.key()) + " "
                + call.key().condition();
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
