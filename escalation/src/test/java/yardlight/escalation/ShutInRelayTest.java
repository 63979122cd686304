package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.RequestTrigger;

/** A relay is sent the request: what is not known of a try is never taken for not done. */
class ShutInRelayTest {

    private final ShutInNight night = ShutInNight.on(ShutInNight.BY_RELAY);

    @BeforeEach
    void asked() {
        night.ask("2026-11-28T02:10");
    }

    @Test
    void a_try_is_stored_before_it_goes_out() {
        assertThat(night.send("2026-11-28T02:10:01")).isInstanceOf(Answer.Offered.class);
        assertThat(night.request().state()).isEqualTo(RequestState.TRYING);
    }

    @Test
    void two_gateways_do_not_try_at_once() {
        night.send("2026-11-28T02:10:01");

        assertThat(night.send("2026-11-28T02:10:20")).isInstanceOf(Answer.Done.class);
    }

    @Test
    void a_relay_that_is_down_is_tried_again_and_expires_as_surely_not_done() {
        night.send("2026-11-28T02:10:01");
        night.sent("2026-11-28T02:10:02", RequestTrigger.NOT_TAKEN);
        assertThat(night.send("2026-11-28T02:10:11")).isInstanceOf(Answer.Offered.class);
        night.sent("2026-11-28T02:10:12", RequestTrigger.NOT_TAKEN);

        night.due("2026-11-28T02:15");

        assertThat(night.request().state()).isEqualTo(RequestState.EXPIRED);
        assertThat(night.loud()).isTrue();
    }

    @Test
    void an_answer_that_never_came_is_waited_for_and_then_called_not_confirmed() {
        night.send("2026-11-28T02:10:01");
        night.sent("2026-11-28T02:10:11", RequestTrigger.UNKNOWN);
        night.send("2026-11-28T02:10:31");
        night.sent("2026-11-28T02:10:32", RequestTrigger.NOT_TAKEN);

        night.due("2026-11-28T02:15");
        assertThat(night.request().state()).isEqualTo(RequestState.UNCERTAIN);
        night.due("2026-11-28T02:16");

        assertThat(night.request().state()).isEqualTo(RequestState.UNCONFIRMED);
        assertThat(night.loud()).isTrue();
    }

    @Test
    void a_gateway_that_died_in_the_middle_of_a_try_tries_again_and_does_not_call_it_never_sent() {
        night.send("2026-11-28T02:10:01");

        assertThat(night.send("2026-11-28T02:10:21")).isInstanceOf(Answer.Offered.class);
        night.sent("2026-11-28T02:10:22", RequestTrigger.NOT_TAKEN);

        assertThat(night.request().state()).isEqualTo(RequestState.UNCERTAIN);
    }

    @Test
    void no_try_begins_that_could_arrive_after_the_expiry() {
        assertThat(night.send("2026-11-28T02:14:49")).isInstanceOf(Answer.Offered.class);
        night.sent("2026-11-28T02:14:49", RequestTrigger.NOT_TAKEN);
        assertThat(night.send("2026-11-28T02:14:59")).isInstanceOf(Answer.Done.class);
    }

    @Test
    void what_the_relay_took_is_told_and_not_sent_again() {
        night.send("2026-11-28T02:10:01");
        night.sent("2026-11-28T02:10:02", RequestTrigger.TAKE);

        assertThat(night.told())
                .contains("MESA 9 has the request to shut in 2:10 AM. Not done yet: it has to confirm.");
        assertThat(night.send("2026-11-28T02:12")).isInstanceOf(Answer.Done.class);
    }

    @Test
    void a_relay_that_refuses_is_told_at_once() {
        night.send("2026-11-28T02:10:01");
        night.sent("2026-11-28T02:10:02", RequestTrigger.REFUSE);

        assertThat(night.request().state()).isEqualTo(RequestState.REFUSED);
        assertThat(night.loud()).isTrue();
    }
}
