package yardlight.escalation;

import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.Part;
import yardlight.escalation.swap.SwapDay;

/** A roster of up to three people week about, and what they say about turns: Ana has the week from Monday 2026-11-23 07:00. */
final class SwapNight {

    static final String NOON = "2026-11-25T12:00";

    final Play play;

    SwapNight(Setup setup) {
        play = new Play(setup);
    }

    Offer offered(SwapDay day) {
        ask(NOON, day);
        return open().get(0);
    }

    Answer ask(String local, SwapDay day) {
        return play.at(local, said(new SwapSaid.Asked("ana", day)));
    }

    void decline(String local, Offer offer, String contact) {
        play.at(local, said(new SwapSaid.Declined(offer.id(), contact)));
    }

    void due(Offer offer) {
        play.at(offer.expiresAt(), said(new SwapSaid.Due(offer.id())));
    }

    /** What the gateway does with a yes. */
    Answer take(String local, Offer offer, String contact) {
        Instant now = at(local);
        Part left = offer.left(LocalDateTime.ofInstant(now, Fixtures.CHICAGO));
        Setup next = play.picture.setup().withRelief("crew", new Relief(left.from(), left.to(), contact));
        Setup before = play.picture.setup();
        Answer answer = play.at(
                now,
                new Stimulus.SetupChanged(
                        next, contact + ", by text", Optional.of(new Stimulus.Taking(offer.id(), contact))));
        if (answer instanceof Answer.Refusal) {
            play.picture.setup(before);
        }
        return answer;
    }

    List<Offer> open() {
        return play.picture.offers("crew");
    }

    List<String> onCall(String local) {
        return play.picture.setup().peopleBehind("roster:crew", at(local));
    }

    List<String> texts() {
        return play.picture.notices().stream()
                .filter(notice -> notice.purpose() == Purpose.TURN && notice.state() == NoticeState.QUEUED)
                .map(notice -> notice.contact() + " " + notice.text())
                .toList();
    }

    static Stimulus said(SwapSaid said) {
        return new Stimulus.Swap(said);
    }

    static Relief relief(String from, String to, String contact) {
        return new Relief(LocalDateTime.parse(from), LocalDateTime.parse(to), contact);
    }

    static Contact ana() {
        return new Contact(
                "ana",
                "Ana Ruelas",
                Fixtures.CHICAGO,
                Language.EN,
                List.of(new Line("mail", "ana@ranch.example")),
                List.of(),
                20);
    }

    static Contact person(String id, Language language) {
        return person(id, language, List.of());
    }

    static Contact asleep(String id, Priority lets) {
        return person(
                id,
                Language.EN,
                List.of(QuietHours.daily(LocalTime.of(21, 0), LocalTime.of(6, 0), Fixtures.CHICAGO, lets)));
    }

    static Contact person(String id, Language language, List<QuietHours> quiet) {
        String name = id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
        return new Contact(
                id, name, Fixtures.CHICAGO, language, List.of(new Line("mail", id + "@ranch.example")), quiet, 20);
    }

    static Setup setup(List<Relief> reliefs, Contact... people) {
        List<String> ids = List.of(people).stream().map(Contact::id).toList();
        var crew = new Roster(
                "crew", Fixtures.CHICAGO, LocalDateTime.parse("2026-11-23T07:00"), Duration.ofDays(7), ids, reliefs);
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(),
                List.of(people),
                List.of(crew),
                List.of(new Ladder(
                        "night",
                        Ladder.EndsWhen.ACKNOWLEDGED,
                        List.of(new Rung(List.of("roster:crew"), Duration.ofMinutes(5), 1)),
                        1)));
    }
}
