package yardlight.escalation.shutin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RequestTest {

    private static final Instant ASKED = Instant.parse("2026-11-28T08:13:00Z");
    private static final Terms TERMS = Terms.usual(Terms.Way.BOX, "mesa-9-box");
    private static final Request REQUEST =
            Request.made("mesa-9.shut-in.1", TERMS, new Asker(Asker.Kind.PAGE, "ana"), ASKED);

    @Test
    void may_be_handed_out_up_to_the_last_moment_and_not_at_its_expiry() {
        Instant expiry = ASKED.plus(TERMS.expires());

        assertThat(REQUEST.after(RequestTrigger.TAKE, expiry.minusNanos(1))).isPresent();
        assertThat(REQUEST.after(RequestTrigger.TAKE, expiry)).isEmpty();
    }

    @Test
    void is_due_when_it_expires_and_once_it_went_out_when_it_should_be_confirmed() {
        Request fetched =
                REQUEST.after(RequestTrigger.TAKE, ASKED.plusSeconds(20)).orElseThrow();

        assertThat(REQUEST.dueAt()).contains(ASKED.plus(TERMS.expires()));
        assertThat(fetched.dueAt()).contains(ASKED.plus(TERMS.confirmWithin()));
        assertThat(fetched.after(RequestTrigger.CONFIRM, ASKED.plusSeconds(30)).flatMap(Request::dueAt))
                .isEmpty();
    }

    @Test
    void remembers_when_it_first_went_to_the_site() {
        Request fetched =
                REQUEST.after(RequestTrigger.TAKE, ASKED.plusSeconds(20)).orElseThrow();
        Request again =
                fetched.after(RequestTrigger.TAKE, ASKED.plusSeconds(80)).orElseThrow();

        assertThat(again.takenAt()).contains(ASKED.plusSeconds(20));
        assertThat(again.id()).isEqualTo(REQUEST.id());
    }

    @Test
    void terms_are_consented_to_letter_by_letter() {
        Standing on = Standing.none("mesa-9").with(Optional.of(new Consent(TERMS.words(), "owner", ASKED)));
        Terms other = new Terms(
                TERMS.way(),
                TERMS.through(),
                TERMS.point(),
                TERMS.done(),
                TERMS.refused(),
                TERMS.expires().plusSeconds(1),
                TERMS.confirmWithin(),
                TERMS.lastCall());

        assertThat(on.on(TERMS)).isTrue();
        assertThat(on.on(other)).isFalse();
        assertThat(on.on(Terms.usual(Terms.Way.RELAY, "mesa-9-box"))).isFalse();
        assertThat(Standing.none("mesa-9").on(TERMS)).isFalse();
    }

    @Test
    void terms_do_not_give_up_before_the_request_has_expired() {
        assertThatThrownBy(() -> new Terms(
                        Terms.Way.BOX,
                        "box",
                        "shut-in",
                        "done",
                        "refused",
                        Duration.ofMinutes(5),
                        Duration.ofMinutes(4),
                        Optional.empty()))
                .hasMessage("confirmWithin must not be shorter than expires: PT4M");
    }

    @Test
    void a_wish_is_granted_by_its_code_from_the_same_line_in_time_only() {
        var wish = new Wish("ana", "+15755550101", 482_913, ASKED.plusSeconds(300));

        assertThat(wish.grantedBy("ana", "+15755550101", 482_913, ASKED)).isTrue();
        assertThat(wish.grantedBy("ana", "+15755550101", 482_914, ASKED)).isFalse();
        assertThat(wish.grantedBy("ana", "+15755550102", 482_913, ASKED)).isFalse();
        assertThat(wish.grantedBy("ben", "+15755550101", 482_913, ASKED)).isFalse();
        assertThat(wish.grantedBy("ana", "+15755550101", 482_913, ASKED.plusSeconds(300)))
                .isFalse();
    }
}
