package yardlight.gateway.ladders;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.escalation.rehearsal.PastCall;
import yardlight.escalation.rehearsal.PastNights;
import yardlight.escalation.rehearsal.PastText;
import yardlight.escalation.rehearsal.Toll;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.ladders.NightsSheet.Figure;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.stage.Seasons;

/** Makes the page of past nights. A night is from noon to noon at the first of the ladder's sites. */
@Component
class NightsSheets {

    /** Whoever has more alarms than can be played sees fewer days. Ours. */
    static final List<Integer> DAYS = List.of(90, 30, 7);

    /** What came of so many days. */
    record Span(int days, Seasons.Played played) {}

    private final Seasons seasons;
    private final InstantSource clock;

    NightsSheets(Seasons seasons, InstantSource clock) {
        this.seasons = seasons;
        this.clock = clock;
    }

    /**
     * Plays the last 90 days, or as many fewer as can be played.
     *
     * @param setup in which the ladder is as it is wanted
     * @param wanted the night to be shown, {@code 2026-11-24}; the newest when there is no such night
     */
    NightsSheet of(LadderForm form, Ask ask, Setup setup, String wanted, Tongue tongue) {
        List<Site> sites = setup.sites().values().stream()
                .filter(site -> site.ladder().equals(form.id()))
                .toList();
        String names = sites.stream().map(Site::name).collect(Collectors.joining(", "));
        ZoneId zone =
                new Names(setup).zone(sites.stream().map(Site::id).findFirst().orElse(ask.site()));
        Instant now = clock.instant();
        Set<String> ids = sites.stream().map(Site::id).collect(Collectors.toCollection(TreeSet::new));
        Span span = longest(days -> seasons.play(
                setup, Optional.of(ids), noon(LocalDate.ofInstant(now, zone).minusDays(days), zone), now, Map.of()));
        var clockface = new Clockface(zone, now, tongue.locale());
        return span.played() instanceof Seasons.Compared compared
                ? sheet(form, ask, span.days(), names, wanted, new NightView(compared, zone, clockface, tongue))
                : new NightsSheet(
                        form,
                        ask,
                        span.days(),
                        names,
                        why((Seasons.NotPlayed) span.played(), span.days(), tongue),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty());
    }

    /** The longest that can be played; who finds another season being played does not ask for another one. */
    static Span longest(IntFunction<Seasons.Played> play) {
        Span span = new Span(DAYS.get(0), play.apply(DAYS.get(0)));
        for (int days : DAYS.subList(1, DAYS.size())) {
            boolean tooMuch = span.played() == Seasons.NotPlayed.ALARMS || span.played() == Seasons.NotPlayed.TEXTS;
            span = tooMuch ? new Span(days, play.apply(days)) : span;
        }
        return span;
    }

    private static NightsSheet sheet(LadderForm form, Ask ask, int days, String sites, String wanted, NightView view) {
        Seasons.Compared compared = view.compared();
        List<LocalDate> nights = nights(compared, view.zone());
        Optional<LocalDate> shown = nights.stream()
                .filter(night -> night.toString().equals(wanted))
                .findFirst()
                .or(() -> nights.stream().findFirst());
        return new NightsSheet(
                form,
                ask,
                days,
                sites,
                "",
                figures(compared.tollThen(), compared.tollNow(), view.tongue()),
                people(compared, view.tongue()),
                nights.stream().map(night -> view.choice(night, shown)).toList(),
                shown.map(view::night));
    }

    static Instant noon(LocalDate day, ZoneId zone) {
        return day.atTime(LocalTime.NOON).atZone(zone).toInstant();
    }

    private static String why(Seasons.NotPlayed what, int days, Tongue tongue) {
        return switch (what) {
            case ALARMS -> tongue.say("nights.toomuch.alarms", Seasons.MOST_ALARMS, days);
            case TEXTS -> tongue.say("nights.toomuch.texts", PastNights.MOST_TEXTS, days);
            case BUSY -> tongue.say("nights.busy");
        };
    }

    private static List<Figure> figures(Toll really, Toll would, Tongue tongue) {
        var figures = new ArrayList<Figure>();
        figures.add(Figure.of(tongue.say("nights.texts"), really.texts(), would.texts()));
        if (really.mails() + would.mails() > 0) {
            figures.add(Figure.of(tongue.say("nights.mails"), really.mails(), would.mails()));
        }
        figures.add(Figure.of(tongue.say("nights.atnight"), really.atNight(), would.atNight()));
        figures.add(Figure.of(tongue.say("nights.wakings"), really.wakings(), would.wakings()));
        figures.add(Figure.of(tongue.say("nights.longest"), wait(really.longest()), wait(would.longest())));
        figures.add(Figure.of(tongue.say("nights.median"), wait(really.median()), wait(would.median())));
        figures.add(
                Figure.of(tongue.say("nights.unanswered", really.alarms()), really.unanswered(), would.unanswered()));
        return figures;
    }

    private static String wait(Optional<Duration> wait) {
        return wait.map(NightView::length).orElse("–");
    }

    private static List<Figure> people(Seasons.Compared compared, Tongue tongue) {
        var names = new Names(compared.setup());
        Map<String, Toll.Person> then = byContact(compared.tollThen());
        Map<String, Toll.Person> now = byContact(compared.tollNow());
        return Stream.concat(then.keySet().stream(), now.keySet().stream())
                .distinct()
                .sorted(Comparator.comparing(names::contact))
                .map(id -> Figure.of(names.contact(id), person(then.get(id), tongue), person(now.get(id), tongue)))
                .toList();
    }

    private static Map<String, Toll.Person> byContact(Toll toll) {
        var people = new TreeMap<String, Toll.Person>();
        toll.people().forEach(person -> people.put(person.contact(), person));
        return people;
    }

    private static String person(Toll.Person person, Tongue tongue) {
        int all = person == null ? 0 : person.texts() + person.mails();
        return person == null || person.atNight() == 0
                ? Integer.toString(all)
                : tongue.say("nights.person", all, person.atNight());
    }

    /** In which nights anybody was called, or would have been, by the evening on which each begins. */
    static List<LocalDate> nights(Seasons.Compared compared, ZoneId zone) {
        return Stream.of(compared.really(), compared.would())
                .flatMap(season -> Stream.concat(
                        season.texts().stream().map(PastText::at),
                        season.calling().stream().map(PastCall::at)))
                .map(at -> evening(at, zone))
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    private static LocalDate evening(Instant at, ZoneId zone) {
        LocalDate day = LocalDate.ofInstant(at, zone);
        return at.isBefore(noon(day, zone)) ? day.minusDays(1) : day;
    }
}
