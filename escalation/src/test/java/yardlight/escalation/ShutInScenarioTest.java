package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.shutin.RequestState;

/** Mesa 9 is asked to shut in, and fetches that with a heartbeat: never done twice or late, and never unreported. */
class ShutInScenarioTest {

    private final ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);

    @Test
    void everybody_on_the_ladder_is_told_each_step() {
        night.ask("2026-11-28T02:10");
        night.beat("2026-11-28T02:10:30");
        night.event("2026-11-28T02:11", ShutInNight.DONE, Optional.empty());

        assertThat(night.told())
                .containsExactly(
                        "MESA 9 ASKED TO SHUT IN 2:10 AM by Ana Ruelas. Not done yet: you will hear what the site"
                                + " says.",
                        "MESA 9 ASKED TO SHUT IN 2:10 AM by Ana Ruelas. Not done yet: you will hear what the site"
                                + " says.",
                        "MESA 9 has the request to shut in 2:10 AM. Not done yet: it has to confirm.",
                        "MESA 9 has the request to shut in 2:10 AM. Not done yet: it has to confirm.",
                        "MESA 9 IS SHUT IN, the site says 2:11 AM. It is started again at the site only.",
                        "MESA 9 IS SHUT IN, the site says 2:11 AM. It is started again at the site only.");
        assertThat(night.request().state()).isEqualTo(RequestState.CONFIRMED);
        assertThat(night.loud()).isFalse();
    }

    @Test
    void the_confirmation_is_an_alarm_that_somebody_has_seen_and_nobody_is_called_for() {
        night.ask("2026-11-28T02:10");

        Answer.Result result = night.event("2026-11-28T02:11", ShutInNight.DONE, Optional.empty());

        assertThat(result.outcome()).isEqualTo(Outcome.OCCURRED);
        assertThat(night.play.picture.alarm(ShutInNight.DONE).state()).isEqualTo(AlarmState.ACKNOWLEDGED);
        assertThat(night.play.picture.callouts()).isEmpty();
    }

    @Test
    void a_lost_answer_is_given_again_with_the_next_heartbeat_under_the_same_name() {
        night.ask("2026-11-28T02:10");

        var first = (Answer.Offered) night.beat("2026-11-28T02:10:30");
        var second = (Answer.Offered) night.beat("2026-11-28T02:11:30");

        assertThat(second).isEqualTo(first);
        assertThat(night.told()).hasSize(4);
        assertThat(night.play.log)
                .anyMatch(line -> line.endsWith("goes to box mesa-9-box once more with the answer to its heartbeat"));
    }

    @Test
    void nothing_is_handed_out_from_its_expiry_on_and_nothing_after_it_was_confirmed() {
        night.ask("2026-11-28T02:10");

        assertThat(night.beat("2026-11-28T02:14:59")).isInstanceOf(Answer.Offered.class);
        assertThat(night.beat("2026-11-28T02:15")).isInstanceOf(Answer.Done.class);

        ShutInNight other = ShutInNight.on(ShutInNight.BY_BOX);
        other.ask("2026-11-28T02:10");
        other.event("2026-11-28T02:11", ShutInNight.DONE, Optional.empty());
        assertThat(other.beat("2026-11-28T02:12")).isInstanceOf(Answer.Done.class);
    }

    @Test
    void what_nobody_fetched_expires_loudly_for_everybody() {
        night.ask("2026-11-28T02:10");
        night.due("2026-11-28T02:14:59");
        assertThat(night.loud()).isFalse();

        night.due("2026-11-28T02:15");

        assertThat(night.request().state()).isEqualTo(RequestState.EXPIRED);
        assertThat(night.told())
                .contains("MESA 9 WAS NOT SHUT IN: the request expired 2:15 AM before the site took it.");
        everybodyIsCalled();
    }

    @Test
    void a_box_that_fetches_and_never_confirms_is_told_to_everybody() {
        night.ask("2026-11-28T02:10");
        night.beat("2026-11-28T02:10:30");
        night.due("2026-11-28T02:15");
        assertThat(night.loud()).isFalse();

        night.due("2026-11-28T02:16");

        assertThat(night.request().state()).isEqualTo(RequestState.UNCONFIRMED);
        everybodyIsCalled();
    }

    private void everybodyIsCalled() {
        assertThat(night.loud()).isTrue();
        Callout callout = night.play.picture.callouts().get(0);
        assertThat(callout.facts().told()).containsExactlyInAnyOrder("ana", "ben");
        assertThat(callout.facts().ladder()).isEqualTo("everyone");
        assertThat(night.play.picture.notices())
                .anyMatch(notice -> notice.text().startsWith("MESA 9 SHUT IN NOT CONFIRMED 2:1"));
    }

    @Test
    void a_confirmation_that_comes_late_is_believed_and_ends_the_alarm() {
        night.ask("2026-11-28T02:10");
        night.beat("2026-11-28T02:10:30");
        night.due("2026-11-28T02:16");

        night.event(
                "2026-11-28T02:20",
                ShutInNight.DONE,
                Optional.of(night.request().id()));

        assertThat(night.request().state()).isEqualTo(RequestState.CONFIRMED);
        assertThat(night.loud()).isFalse();
    }

    @Test
    void a_refusal_is_told_at_once_and_is_loud() {
        night.ask("2026-11-28T02:10");
        night.beat("2026-11-28T02:10:30");

        night.event(
                "2026-11-28T02:11",
                ShutInNight.REFUSED,
                Optional.of(night.request().id()));

        assertThat(night.told()).contains("MESA 9 DOES NOT SHUT IN, the site says 2:11 AM. Somebody has to go there.");
        everybodyIsCalled();
    }

    @Test
    void who_asks_while_a_request_is_open_joins_it() {
        var first = (Answer.Asked) night.ask("2026-11-28T02:10");
        var second = (Answer.Asked) night.ask("2026-11-28T02:11");

        assertThat(second.joined()).isTrue();
        assertThat(second.request()).isEqualTo(first.request());
        assertThat(night.told()).hasSize(2);
    }

    @Test
    void a_confirmation_is_taken_once_however_often_it_comes() {
        night.ask("2026-11-28T02:10");
        String id = night.request().id();
        night.event("2026-11-28T02:11", ShutInNight.DONE, Optional.of(id));
        int told = night.told().size();

        Answer.Result again = night.event("2026-11-28T02:12", ShutInNight.DONE, Optional.of(id));

        assertThat(again.outcome()).isEqualTo(Outcome.REPEATED);
        assertThat(again.note()).contains("request " + id + " is over: confirmed");
        assertThat(night.told()).hasSize(told);
    }

    @Test
    void a_box_that_answers_an_old_request_is_told_so_and_confirms_nothing() {
        night.ask("2026-11-28T02:10");
        String old = night.request().id();
        night.due("2026-11-28T02:15");
        night.ask("2026-11-28T02:20");

        Answer.Result result = night.event("2026-11-28T02:21", ShutInNight.DONE, Optional.of(old));

        assertThat(result.note()).contains("request " + old + " is not the last one; nothing came of it");
        assertThat(night.request().state()).isEqualTo(RequestState.ASKED);
    }

    @Test
    void an_event_of_before_the_request_confirms_nothing() {
        night.ask("2026-11-28T02:10");

        night.event("2026-11-28T02:11", ShutInNight.DONE, Fixtures.at("2026-11-28T02:09:59"), Optional.empty());

        assertThat(night.request().state()).isEqualTo(RequestState.ASKED);
        assertThat(night.play.picture.callouts()).isNotEmpty();
    }

    @Test
    void another_box_is_given_nothing() {
        ShutInNight other = ShutInNight.on(ShutInNight.BY_RELAY);
        other.ask("2026-11-28T02:10");

        assertThat(other.beat("2026-11-28T02:10:30")).isInstanceOf(Answer.Done.class);
        assertThat(other.request().state()).isEqualTo(RequestState.ASKED);
    }
}
