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
import java.util.TreeMap;
import java.util.TreeSet;
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

    static final int DAYS = 90;

    private final Seasons seasons;
    private final InstantSource clock;

    NightsSheets(Seasons seasons, InstantSource clock) {
        this.seasons = seasons;
        this.clock = clock;
    }

    /**
     * Plays the last 90 days.
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
        Instant from = noon(LocalDate.ofInstant(now, zone).minusDays(DAYS), zone);
        Seasons.Played played = seasons.play(
                setup,
                Optional.of(sites.stream().map(Site::id).collect(Collectors.toCollection(TreeSet::new))),
                from,
                now,
                Map.of());
        var clockface = new Clockface(zone, now, tongue.locale());
        return played instanceof Seasons.Compared compared
                ? sheet(form, ask, names, wanted, new NightView(compared, zone, clockface, tongue))
                : new NightsSheet(
                        form,
                        ask,
                        names,
                        tooMuch((Seasons.TooMuch) played, tongue),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty());
    }

    private static NightsSheet sheet(LadderForm form, Ask ask, String sites, String wanted, NightView view) {
        Seasons.Compared compared = view.compared();
        List<LocalDate> nights = nights(compared, view.zone());
        Optional<LocalDate> shown = nights.stream()
                .filter(night -> night.toString().equals(wanted))
                .findFirst()
                .or(() -> nights.stream().findFirst());
        return new NightsSheet(
                form,
                ask,
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

    private static String tooMuch(Seasons.TooMuch what, Tongue tongue) {
        return switch (what) {
            case ALARMS -> tongue.say("nights.toomuch.alarms", Seasons.MOST_ALARMS);
            case TEXTS -> tongue.say("nights.toomuch.texts", PastNights.MOST_TEXTS);
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

    /** In which nights anybody was called, by the evening on which each begins. */
    static List<LocalDate> nights(Seasons.Compared compared, ZoneId zone) {
        return Stream.concat(
                        compared.really().texts().stream().map(PastText::at),
                        compared.really().calls().stream().map(PastCall::at))
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
