package yardlight.gateway.ladders;

import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.util.MultiValueMap;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Desk;
import yardlight.gateway.edit.History;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.edit.Telling;
import yardlight.gateway.ladders.LadderSheet.Choice;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Makes the page of one ladder. */
@Component
class LadderSheets {

    /** Points to choose from; another one is reached from its site's page. */
    private static final int MOST_PLACES = 100;

    private static final int EDITS_LOOKED_AT = 8;
    private static final int MOST_EDITS = 3;

    private final Desk desk;
    private final History history;
    private final Practice practice;
    private final SetupInForce inForce;
    private final MessageSource words;
    private final InstantSource clock;

    LadderSheets(
            Desk desk,
            History history,
            Practice practice,
            SetupInForce inForce,
            MessageSource words,
            InstantSource clock) {
        this.desk = desk;
        this.history = history;
        this.practice = practice;
        this.inForce = inForce;
        this.words = words;
        this.clock = clock;
    }

    Tongue tongue(Locale locale) {
        return new Tongue(words, locale);
    }

    Setup setup() {
        return inForce.setup();
    }

    /** What is asked when nobody has asked anything: of a site that has the ladder, if there is one. */
    Ask usual(String ladder) {
        return setup().sites().values().stream()
                .min(Comparator.comparing((Site site) -> !site.ladder().equals(ladder)))
                .map(site -> Ask.usual(setup(), site.id(), clock.instant()))
                .orElseGet(() -> Ask.usual(setup(), "", clock.instant()));
    }

    /** The form of the ladder that is stored. */
    Optional<LadderForm> stored(String id) {
        Desk.Look now = desk.look();
        Optional<Node.Members> there = now.tree().piece(Part.LADDERS, id).node();
        return there.map(node -> LadderForm.of(node, id, now.version()));
    }

    /**
     * As it was sent; of whoever may not edit the one that is stored.
     *
     * @throws Problem 404 when there is none
     */
    LadderForm form(String id, MultiValueMap<String, String> sent) {
        return sent.containsKey(LadderForm.EDITED)
                ? LadderForm.read(id, sent)
                : stored(id).orElseThrow(() -> Problem.notFound("there is no ladder " + id));
    }

    /** The ladder as it is in the form. */
    Piece piece(LadderForm form) {
        return form.piece(desk.look(form.seen()).tree().piece(Part.LADDERS, form.id()));
    }

    /** @param handedIn whether what is wrong is said beside the fields: not while somebody is still building */
    LadderSheet sheet(LadderForm form, Ask ask, Locale locale, boolean handedIn) {
        Practice.Practised practised = practice.play(piece(form), ask);
        Mistakes mistakes = mistakes(form, practised, locale);
        return new LadderSheet(
                form,
                ask,
                handedIn ? mistakes : Mistakes.NONE,
                RehearsalSheet.of(practised, mistakes, tongue(locale)),
                calls(form, locale),
                places(form.id(), ask),
                priorities(locale),
                usedBy(form.id()),
                desk.look().tree().piece(Part.LADDERS, form.id()).node().isEmpty(),
                edits(form.id(), locale));
    }

    /** The rehearsal alone, for what is renewed while somebody types. */
    RehearsalSheet rehearsal(LadderForm form, Ask ask, Locale locale) {
        Practice.Practised practised = practice.play(piece(form), ask);
        return RehearsalSheet.of(practised, mistakes(form, practised, locale), tongue(locale));
    }

    private Mistakes mistakes(LadderForm form, Practice.Practised practised, Locale locale) {
        return Mistakes.of(form, practised.trial().mistakes(), setup(), tongue(locale))
                .and(practised.ask().mistakes(setup()), tongue(locale));
    }

    List<String> usedBy(String ladder) {
        return setup().sites().values().stream()
                .filter(site -> site.ladder().equals(ladder))
                .map(Site::name)
                .toList();
    }

    Clockface clockface(Locale locale) {
        ZoneId zone =
                setup().sites().values().stream().findFirst().map(Site::zone).orElse(ZoneOffset.UTC);
        return new Clockface(zone, clock.instant(), locale);
    }

    private List<Choice> calls(LadderForm form, Locale locale) {
        var telling = new Telling(tongue(locale), setup(), true);
        Stream<String> known = Stream.of(
                        setup().contacts().keySet().stream(),
                        setup().rosters().keySet().stream().map(Rung.ROSTER::concat),
                        Stream.of(Rung.EVERYONE))
                .flatMap(ids -> ids);
        Stream<String> typed = form.rungs().stream().flatMap(rung -> rung.call().stream());
        return Stream.concat(known, typed)
                .filter(call -> !call.isBlank())
                .distinct()
                .map(call -> new Choice(call, telling.person(call)))
                .toList();
    }

    private List<Choice> places(String ladder, Ask ask) {
        var places = new ArrayList<Choice>();
        List<Site> sites = setup().sites().values().stream()
                .sorted(Comparator.comparing((Site site) -> !site.ladder().equals(ladder)))
                .toList();
        var points = setup().points().stream().collect(java.util.stream.Collectors.groupingBy(Point::site));
        for (Site site : sites) {
            for (Point point : points.getOrDefault(site.id(), List.of())) {
                places.add(new Choice(site.id() + "/" + point.id(), site.name() + ", " + point.name()));
            }
            if (!points.containsKey(site.id())) {
                places.add(new Choice(site.id() + "/point", site.name()));
            }
        }
        List<Choice> listed = places.subList(0, Math.min(MOST_PLACES, places.size()));
        boolean there = listed.stream().anyMatch(place -> place.value().equals(ask.where()));
        return there
                ? List.copyOf(listed)
                : Stream.concat(Stream.of(new Choice(ask.where(), ask.where())), listed.stream())
                        .toList();
    }

    private List<Choice> priorities(Locale locale) {
        return Stream.concat(Stream.of(""), Stream.of(Priority.values()).map(Priority::word))
                .map(word ->
                        new Choice(word, tongue(locale).say("ladders.priority." + (word.isEmpty() ? "own" : word))))
                .toList();
    }

    private List<LadderSheet.Past> edits(String ladder, Locale locale) {
        var telling = new Telling(tongue(locale), setup(), true);
        return history.of(Part.LADDERS, ladder, EDITS_LOOKED_AT).stream()
                .limit(MOST_EDITS)
                .map(edit -> past(edit, ladder, telling, clockface(locale)))
                .toList();
    }

    private static LadderSheet.Past past(History.Edit edit, String ladder, Telling telling, Clockface clock) {
        Saved.Changed own = edit.changes().stream()
                .filter(change -> change.part() == Part.LADDERS && change.key().equals(ladder))
                .findFirst()
                .orElseThrow();
        return new LadderSheet.Past(
                edit.version(),
                edit.by(),
                clock.read(edit.at()),
                telling.differences(own),
                edit.changes().size() - 1,
                edit.version() == 1);
    }
}
