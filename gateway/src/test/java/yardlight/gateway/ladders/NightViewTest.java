package yardlight.gateway.ladders;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.at;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.rehearsal.PastCall;
import yardlight.escalation.rehearsal.PastText;
import yardlight.escalation.rehearsal.Season;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Tongues;
import yardlight.gateway.stage.Seasons;

/** The night of November 24, in which the tank calls at 2:13. */
class NightViewTest {

    private static final LocalDate EVENING = LocalDate.parse("2026-11-24");
    private static final Instant SINCE = at("2026-11-25T02:13");
    private static final Season NOTHING = new Season(List.of(), List.of());

    @Test
    void mails_are_counted_apart_as_they_are_of_the_whole_time() {
        NightView view = view(new Season(List.of(text("sms-mail"), text("mail")), List.of()), NOTHING);

        assertThat(view.choice(EVENING, Optional.empty()).label()).isEqualTo("Tue, Nov 24: 1 text, 1 mail");
        assertThat(view.night(EVENING).really().summary()).isEqualTo("1 text, 1 mail");
        assertThat(view.night(EVENING).would().summary()).isEqualTo("0 texts");
        assertThat(view.compared().tollThen().texts()).isEqualTo(1);
    }

    @Test
    void a_night_in_which_only_the_other_ladder_texts_somebody_can_be_chosen() {
        NightView view = view(NOTHING, new Season(List.of(text("sms-mail")), List.of()));

        assertThat(NightsSheets.nights(view.compared(), CHICAGO)).containsExactly(EVENING);
    }

    @Test
    void what_calls_nobody_is_shown_so_and_is_not_unanswered() {
        NightView view = view(
                new Season(List.of(), List.of(call(true, Optional.empty()))),
                new Season(List.of(), List.of(call(false, Optional.empty()))));

        NightsSheet.Night night = view.night(EVENING);

        assertThat(night.really().summary()).isEqualTo("0 texts, one alarm unanswered");
        assertThat(night.would().summary()).isEqualTo("0 texts");
        assertThat(night.would().rows())
                .containsExactly(new NightsSheet.Row("2:13 AM", "Mesa 9 WATER TANK high-high: calls nobody", true));
    }

    @Test
    void an_answer_after_the_night_is_told_with_its_day() {
        NightView view = view(
                new Season(List.of(), List.of(call(true, Optional.of(at("2026-11-25T11:59"))))),
                new Season(List.of(), List.of(call(true, Optional.of(at("2026-11-26T02:14"))))));

        NightsSheet.Night night = view.night(EVENING);

        assertThat(night.really().rows()).extracting(NightsSheet.Row::time).containsExactly("2:13 AM", "11:59 AM");
        assertThat(night.would().rows())
                .extracting(NightsSheet.Row::time)
                .containsExactly("2:13 AM", "Thu, Nov 26, 2:14 AM");
    }

    @Test
    void of_more_than_can_be_played_fewer_days_are_played() {
        var asked = new ArrayList<Integer>();

        NightsSheets.Span span = NightsSheets.longest(days -> {
            asked.add(days);
            return days > 7 ? Seasons.NotPlayed.ALARMS : Seasons.NotPlayed.TEXTS;
        });

        assertThat(asked).containsExactly(90, 30, 7);
        assertThat(span).isEqualTo(new NightsSheets.Span(7, Seasons.NotPlayed.TEXTS));
        assertThat(NightsSheets.longest(days -> days > 30 ? Seasons.NotPlayed.TEXTS : compared(NOTHING, NOTHING))
                        .days())
                .isEqualTo(30);
        assertThat(NightsSheets.longest(days -> Seasons.NotPlayed.BUSY).days()).isEqualTo(90);
    }

    private static NightView view(Season really, Season would) {
        return new NightView(
                compared(really, would),
                CHICAGO,
                new Clockface(CHICAGO, at("2026-11-27T09:00"), Tongues.ENGLISH.locale()),
                Tongues.ENGLISH);
    }

    private static Seasons.Compared compared(Season really, Season would) {
        return new Seasons.Compared(Fixtures.theSetup(), really, would, 0);
    }

    private static PastText text(String channel) {
        return PastText.of(SINCE, "ana", channel, Set.of("mesa-9"));
    }

    private static PastCall call(boolean calls, Optional<Instant> answered) {
        return new PastCall(
                TANK, "a", Priority.HIGH, SINCE, calls, Optional.empty(), answered.map(any -> "ben"), answered);
    }
}
