package yardlight.escalation.shutin;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.shutin.RequestState.ASKED;
import static yardlight.escalation.shutin.RequestState.CONFIRMED;
import static yardlight.escalation.shutin.RequestState.EXPIRED;
import static yardlight.escalation.shutin.RequestState.FETCHED;
import static yardlight.escalation.shutin.RequestState.REFUSED;
import static yardlight.escalation.shutin.RequestState.TRYING;
import static yardlight.escalation.shutin.RequestState.UNCERTAIN;
import static yardlight.escalation.shutin.RequestState.UNCONFIRMED;
import static yardlight.escalation.shutin.RequestState.WITHDRAWN;
import static yardlight.escalation.shutin.RequestTrigger.CONFIRM;
import static yardlight.escalation.shutin.RequestTrigger.NOT_TAKEN;
import static yardlight.escalation.shutin.RequestTrigger.REFUSE;
import static yardlight.escalation.shutin.RequestTrigger.TAKE;
import static yardlight.escalation.shutin.RequestTrigger.TIME;
import static yardlight.escalation.shutin.RequestTrigger.TRY;
import static yardlight.escalation.shutin.RequestTrigger.UNKNOWN;
import static yardlight.escalation.shutin.RequestTrigger.WITHDRAW;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.shutin.RequestTransitions.Facts;

/** The life of a request, written down once more by hand. */
class RequestTransitionsTest {

    private static final Facts IN_TIME = new Facts(false, false);
    private static final Facts EXPIRED_NOW = new Facts(true, false);
    private static final Facts LATE = new Facts(true, true);

    private static final Map<RequestState, Set<RequestTrigger>> ALLOWED = Map.of(
            ASKED, EnumSet.of(TAKE, TRY, TIME, CONFIRM, REFUSE, WITHDRAW),
            TRYING, EnumSet.of(TAKE, TRY, NOT_TAKEN, UNKNOWN, TIME, CONFIRM, REFUSE, WITHDRAW),
            UNCERTAIN, EnumSet.of(TAKE, TRY, TIME, CONFIRM, REFUSE, WITHDRAW),
            FETCHED, EnumSet.of(TAKE, TIME, CONFIRM, REFUSE, WITHDRAW),
            CONFIRMED, EnumSet.noneOf(RequestTrigger.class),
            REFUSED, EnumSet.of(CONFIRM),
            EXPIRED, EnumSet.of(CONFIRM),
            UNCONFIRMED, EnumSet.of(CONFIRM, REFUSE),
            WITHDRAWN, EnumSet.of(CONFIRM));

    @Test
    void nothing_else_is_allowed() {
        for (RequestState from : RequestState.values()) {
            Set<RequestTrigger> allowed = RequestTransitions.TABLE.stream()
                    .filter(row -> row.from() == from)
                    .map(RequestTransitions.Row::trigger)
                    .collect(Collectors.toSet());

            assertThat(allowed).as(from.name()).isEqualTo(ALLOWED.get(from));
        }
    }

    @Test
    void a_box_is_given_it_again_until_it_expires_and_not_a_moment_longer() {
        assertThat(after(ASKED, TAKE, IN_TIME)).contains(FETCHED);
        assertThat(after(FETCHED, TAKE, IN_TIME)).contains(FETCHED);
        assertThat(after(ASKED, TAKE, EXPIRED_NOW)).isEmpty();
        assertThat(after(FETCHED, TAKE, EXPIRED_NOW)).isEmpty();
    }

    @Test
    void nothing_leaves_for_the_relay_once_it_has_expired() {
        Stream.of(ASKED, TRYING, UNCERTAIN)
                .forEach(from -> assertThat(after(from, TRY, EXPIRED_NOW)).isEmpty());
    }

    @Test
    void an_outcome_that_nobody_knows_stays_unknown_whatever_later_tries_say() {
        assertThat(after(TRYING, UNKNOWN, IN_TIME)).contains(UNCERTAIN);
        assertThat(after(TRYING, TRY, IN_TIME)).contains(UNCERTAIN);
        assertThat(after(UNCERTAIN, NOT_TAKEN, IN_TIME)).isEmpty();
        assertThat(after(UNCERTAIN, TIME, EXPIRED_NOW)).isEmpty();
        assertThat(after(UNCERTAIN, TIME, LATE)).contains(UNCONFIRMED);
    }

    @Test
    void what_the_relay_surely_did_not_take_is_as_if_never_sent() {
        assertThat(after(TRYING, NOT_TAKEN, EXPIRED_NOW)).contains(ASKED);
        assertThat(after(ASKED, TIME, EXPIRED_NOW)).contains(EXPIRED);
    }

    @Test
    void what_went_out_is_waited_for_longer_than_it_may_be_done() {
        assertThat(after(FETCHED, TIME, EXPIRED_NOW)).isEmpty();
        assertThat(after(FETCHED, TIME, LATE)).contains(UNCONFIRMED);
    }

    @Test
    void time_ends_nothing_early() {
        EnumSet.range(ASKED, FETCHED)
                .forEach(from -> assertThat(after(from, TIME, IN_TIME)).isEmpty());
    }

    @Test
    void what_the_site_says_counts_also_when_it_is_late() {
        Stream.of(REFUSED, EXPIRED, UNCONFIRMED, WITHDRAWN)
                .forEach(from -> assertThat(after(from, CONFIRM, LATE)).contains(CONFIRMED));
    }

    @Test
    void a_second_confirmation_changes_nothing() {
        assertThat(after(CONFIRMED, CONFIRM, IN_TIME)).isEmpty();
        assertThat(after(CONFIRMED, REFUSE, IN_TIME)).isEmpty();
    }

    @Test
    void every_open_request_comes_to_an_end_by_itself() {
        EnumSet.range(ASKED, FETCHED)
                .forEach(from -> assertThat(after(from, TIME, LATE)).get().matches(RequestState::failed));
    }

    private static Optional<RequestState> after(RequestState from, RequestTrigger trigger, Facts facts) {
        return RequestTransitions.next(from, trigger, facts);
    }
}
