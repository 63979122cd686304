package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.SwapNight.ana;
import static yardlight.escalation.SwapNight.asleep;
import static yardlight.escalation.SwapNight.person;
import static yardlight.escalation.SwapNight.relief;
import static yardlight.escalation.SwapNight.said;
import static yardlight.escalation.SwapNight.setup;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Away;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.OfferState;
import yardlight.escalation.swap.Part;
import yardlight.escalation.swap.SwapDay;

/**
 * Somebody's turn is offered, taken or not. Ana has the week from Monday 2026-11-23 07:00, Ben the next, Carl the one after;
 * the ladder calls whoever is on, and nobody else.
 */
class SwapsScenarioTest {

    private static final String NOON_NEXT = "2026-11-25T12:20";
    private static final String NOON = "2026-11-25T12:00";
    private static final SwapDay FRIDAY = SwapDay.weekday(DayOfWeek.FRIDAY, false);
    private static final SwapDay FRIDAY_NIGHT = SwapDay.weekday(DayOfWeek.FRIDAY, true);

    private final SwapNight night =
            new SwapNight(setup(List.of(), ana(), person("ben", Language.EN), person("carl", Language.ES)));
    private final Play play = night.play;

    @Test
    void all_others_are_asked_at_once_in_their_own_language() {
        Answer answer = night.ask(NOON, FRIDAY_NIGHT);

        assertThat(answer).isInstanceOf(Answer.Swapped.class);
        assertThat(night.texts())
                .containsExactly(
                        "ben Yardlight, no alarm: Ana Ruelas asks: will you take over Fri Nov 27 7:00 PM to Sat 7:00 AM?"
                                + " Reply YES 47 or NO 47",
                        "carl Yardlight, no es alarma: Ana Ruelas pregunta: ¿toma usted el turno del vie 27 nov"
                                + " 7:00 PM al sab 7:00 AM? Responda SI 47 o NO 47");
        assertThat(play.log).anyMatch(line -> line.startsWith("swap 47 of crew asked for by ana"));
    }

    @Test
    void the_first_yes_has_it_and_whoever_asked_gets_one_text() {
        Offer offer = night.offered(FRIDAY_NIGHT);

        Answer yes = night.take("2026-11-25T12:10", offer, "ben");
        Answer late = night.take("2026-11-25T12:11", offer, "carl");

        assertThat(yes).isInstanceOf(Answer.Swapped.class);
        assertThat(night.onCall("2026-11-27T23:00")).containsExactly("ben");
        assertThat(night.onCall("2026-11-27T18:00")).containsExactly("ana");
        assertThat(late).isInstanceOf(Answer.Refusal.class);
        assertThat(((Answer.Refusal) late).reason()).isEqualTo("Ben has taken it already");
        assertThat(night.texts().get(2))
                .isEqualTo(
                        "ana Yardlight, no alarm: Ben takes over from you Fri Nov 27 7:00 PM to Sat 7:00 AM. The roster"
                                + " has it.");
        assertThat(play.log).contains("swap 47 of crew ben says yes and takes over from ana");
    }

    @Test
    void a_day_without_a_night_is_from_handover_to_handover() {
        assertThat(night.offered(FRIDAY).from()).isEqualTo("2026-11-27T07:00");
        assertThat(night.open().get(0).to()).isEqualTo("2026-11-28T07:00");
    }

    @Test
    void who_asks_twice_asks_nobody_twice() {
        night.ask(NOON, FRIDAY_NIGHT);
        Answer again = night.ask("2026-11-25T12:01", FRIDAY);

        assertThat(again)
                .isInstanceOfSatisfying(
                        Answer.Swapped.class, one -> assertThat(one.again()).isTrue());
        assertThat(night.texts()).hasSize(2);
    }

    @Test
    void who_has_no_turn_then_is_told_so() {
        assertRefused(play.at(NOON, said(new SwapSaid.Asked("ben", FRIDAY))), "you have no turn then");
    }

    @Test
    void all_say_no_and_whoever_asked_hears_it_once() {
        Offer offer = night.offered(FRIDAY_NIGHT);

        night.decline("2026-11-25T12:10", offer, "ben");
        night.decline("2026-11-25T12:11", offer, "ben");
        night.decline("2026-11-25T12:12", offer, "carl");
        night.due(offer);

        assertThat(night.texts().subList(2, night.texts().size()))
                .containsExactly(
                        "ana Yardlight, no alarm: nobody takes over Fri Nov 27 7:00 PM to Sat 7:00 AM, all said no."
                                + " You still have it.");
        assertThat(play.picture.offer(offer.id()).orElseThrow().state()).isEqualTo(OfferState.EXPIRED);
    }

    @Test
    void nobody_answers_and_whoever_asked_still_has_it() {
        Offer offer = night.offered(FRIDAY_NIGHT);
        assertThat(offer.expiresAt()).isEqualTo(at("2026-11-27T19:00"));

        night.due(offer);

        assertThat(night.texts().get(2)).contains("nobody took over Fri Nov 27 7:00 PM to Sat 7:00 AM in time");
        assertRefused(night.take("2026-11-27T19:05", offer, "ben"), "it is too late for this one");
        assertThat(night.onCall("2026-11-27T23:00")).containsExactly("ana");
    }

    @Test
    void what_is_taken_back_can_be_taken_by_nobody_and_a_question_that_waits_is_not_sent() {
        play.setup(
                "2026-11-25T11:00", setup(List.of(), ana(), asleep("ben", Priority.HIGH), person("carl", Language.EN)));
        night.ask("2026-11-25T23:00", FRIDAY_NIGHT);
        Offer offer = night.open().get(0);
        assertThat(night.texts()).hasSize(1);

        play.at("2026-11-25T23:10", said(new SwapSaid.Withdrawn(offer.id(), "ana")));
        play.at("2026-11-26T06:00", new Stimulus.DeskDue("ben"));

        assertThat(night.texts()).hasSize(1);
        assertThat(play.picture.notices())
                .filteredOn(notice -> notice.contact().equals("ben"))
                .extracting(Notice::state)
                .containsExactly(NoticeState.CANCELLED);
        assertRefused(night.take("2026-11-26T06:05", offer, "carl"), "it was taken back; nobody needs to take it");
    }

    @Test
    void a_question_waits_for_the_end_of_quiet_hours() {
        play.setup(
                "2026-11-25T11:00", setup(List.of(), ana(), asleep("ben", Priority.HIGH), person("carl", Language.EN)));
        night.ask("2026-11-25T23:00", FRIDAY_NIGHT);

        play.at("2026-11-26T06:00", new Stimulus.DeskDue("ben"));

        assertThat(night.texts()).hasSize(2);
        assertThat(night.texts()).anyMatch(text -> text.startsWith("ben "));
    }

    @Test
    void of_a_turn_that_has_begun_the_rest_is_asked_for_and_taken() {
        Answer answer = night.ask("2026-11-27T22:00:10", FRIDAY_NIGHT);
        Offer offer = ((Answer.Swapped) answer).offer();
        assertThat(offer.from()).isEqualTo("2026-11-27T22:01");
        assertThat(offer.expiresAt()).isEqualTo(at("2026-11-28T00:00:10"));

        night.take("2026-11-27T22:30:20", offer, "ben");

        assertThat(night.onCall("2026-11-27T22:30:40")).containsExactly("ana");
        assertThat(night.onCall("2026-11-27T22:31")).containsExactly("ben");
    }

    @Test
    void after_midnight_the_night_is_still_that_of_the_day_before() {
        Answer answer =
                play.at("2026-11-28T02:00", said(new SwapSaid.Asked("ana", SwapDay.near(SwapDay.Kind.TODAY, true))));

        assertThat(((Answer.Swapped) answer).offer().to()).isEqualTo("2026-11-28T07:00");
    }

    @Test
    void nobody_is_asked_with_whom_nobody_would_hear_a_high_alarm_at_once() {
        Contact deaf = asleep("ben", Priority.CRITICAL);
        play.setup("2026-11-25T11:00", setup(List.of(), ana(), deaf, person("carl", Language.EN)));

        assertThat(night.offered(FRIDAY_NIGHT).asked()).containsExactly("carl");
    }

    @Test
    void a_swap_that_would_leave_nobody_is_refused_with_the_reason() {
        play.setup("2026-11-25T11:00", setup(List.of(), ana(), asleep("ben", Priority.CRITICAL)));

        assertRefused(night.ask(NOON, FRIDAY_NIGHT), "with any of the others nobody would be called at once then");
        assertThat(night.texts()).isEmpty();
    }

    @Test
    void who_is_away_then_is_not_asked_and_cannot_take_it() {
        play.setup(
                "2026-11-25T11:00",
                setup(List.of(), ana(), away(person("ben", Language.EN)), person("carl", Language.EN)));
        Offer offer = night.offered(FRIDAY_NIGHT);
        assertThat(offer.asked()).containsExactly("carl");

        play.setup(
                "2026-11-25T12:05",
                setup(List.of(), ana(), person("ben", Language.EN), away(person("carl", Language.EN))));
        assertRefused(night.take("2026-11-25T12:10", offer, "carl"), "you are away then, the setup says");

        play.setup(
                "2026-11-25T12:15",
                setup(List.of(), ana(), away(person("ben", Language.EN)), away(person("carl", Language.EN))));
        assertRefused(
                play.at(NOON_NEXT, said(new SwapSaid.Asked("ana", SwapDay.weekday(DayOfWeek.SATURDAY, false)))),
                "all of the others are away then");
    }

    private static Contact away(Contact contact) {
        var week =
                new Away(LocalDateTime.parse("2026-11-26T00:00"), LocalDateTime.parse("2026-11-30T00:00"), "", false);
        return new Contact(
                contact.id(),
                contact.name(),
                contact.zone(),
                contact.language(),
                contact.lines(),
                contact.quiet(),
                contact.textsPerHour(),
                contact.allsWell(),
                List.of(week));
    }

    @Test
    void who_has_stopped_their_only_line_is_not_asked() {
        play.at("2026-11-25T11:00", new Stimulus.Stopped("ben", "ben@ranch.example", true, "STOP"));

        assertThat(night.offered(FRIDAY_NIGHT).asked()).containsExactly("carl");
    }

    @Test
    void who_cannot_be_called_by_the_time_of_their_yes_does_not_get_it() {
        Offer offer = night.offered(FRIDAY_NIGHT);
        play.at("2026-11-25T12:05", new Stimulus.Stopped("ben", "ben@ranch.example", true, "STOP"));

        assertRefused(night.take("2026-11-25T12:10", offer, "ben"), "nobody would be called at once then");
        assertThat(night.onCall("2026-11-27T23:00")).containsExactly("ana");
    }

    @Test
    void a_roster_that_was_changed_meanwhile_leaves_nothing_to_take_and_nothing_to_tell() {
        Offer offer = night.offered(FRIDAY_NIGHT);
        play.setup(
                "2026-11-25T12:05",
                setup(
                        List.of(relief("2026-11-27T07:00", "2026-11-28T07:00", "carl")),
                        ana(),
                        person("ben", Language.EN),
                        person("carl", Language.EN)));

        assertRefused(
                night.take("2026-11-25T12:10", offer, "ben"),
                "the roster was changed meanwhile; there is nothing to take any more");
        night.due(offer);

        assertThat(night.texts()).hasSize(2);
        assertThat(play.picture.offer(offer.id()).orElseThrow().state()).isEqualTo(OfferState.LAPSED);
    }

    @Test
    void nobody_takes_their_own_turn_nor_one_that_they_were_not_asked_for() {
        Offer offer = night.offered(FRIDAY_NIGHT);

        assertRefused(night.take(NOON, offer, "ana"), "it is your own turn; NO and the number takes it back");
        assertRefused(night.take(NOON, offer, "dora"), "nobody asked you to take this turn");
        assertRefused(
                play.at(NOON, said(new SwapSaid.Declined(offer.id(), "dora"))), "nobody asked you to take this turn");
    }

    @Test
    void a_part_that_was_picked_on_a_page_is_asked_for_as_well() {
        var part = new Part(LocalDateTime.parse("2026-11-26T07:00"), LocalDateTime.parse("2026-11-27T07:00"));

        play.at(NOON, said(new SwapSaid.AskedFor("ana", "crew", part, Optional.of("owner"))));

        assertThat(night.open()).singleElement().extracting(Offer::from).isEqualTo(part.from());
        assertThat(play.log).anyMatch(line -> line.startsWith("swap 47 of crew asked for by owner"));
    }

    private static void assertRefused(Answer answer, String reason) {
        assertThat(answer)
                .isInstanceOfSatisfying(
                        Answer.Refusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(reason));
    }
}
