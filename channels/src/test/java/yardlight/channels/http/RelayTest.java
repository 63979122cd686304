package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.web.Limits;

/** A relay that is asked to shut in: what may have been done is never taken for not done. */
class RelayTest {

    private static final Instant ASKED = Instant.parse("2026-11-28T08:10:00Z");
    private static final Instant EXPIRES = Instant.parse("2026-11-28T08:15:00Z");
    private static final String ID = "mesa-9.shut-in.mx04qvuo";
    private static final String BODY =
            "{\"ask\": \"shut-in\", \"site\": \"{to}\", \"id\": \"{id}\", \"expires\": \"{text}\"}";

    private StandInProvider there;

    @BeforeEach
    void open() throws IOException {
        there = new StandInProvider();
    }

    @AfterEach
    void shut() {
        there.close();
    }

    private Relay relay() {
        return Relay.of("valve", settings(Limits.USUAL));
    }

    private HttpSettings settings(Limits limits) {
        return new HttpSettings(
                new HttpSettings.Form("POST", there.url("/stop"), Map.of(), "application/json", BODY, Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                Settings.ANY,
                HttpSettings.PHONE,
                Optional.empty(),
                limits);
    }

    private Attempt ask() {
        try (Relay relay = relay()) {
            return relay.ask(ID, "mesa-9", ASKED, EXPIRES);
        }
    }

    @Test
    void is_told_which_site_which_request_and_until_when() {
        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.ACCEPTED);

        assertThat(there.messages).singleElement().satisfies(asked -> {
            assertThat(asked.body())
                    .isEqualTo("{\"ask\":\"shut-in\",\"site\":\"mesa-9\",\"id\":\"mesa-9.shut-in.mx04qvuo\","
                            + "\"expires\":\"2026-11-28T08:15:00Z\"}");
            assertThat(asked.header("Idempotency-Key")).isEqualTo(ID);
        });
    }

    @Test
    void is_not_followed_to_another_place() {
        there.says(302, Map.of("Location", there.url("/elsewhere")), "");

        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.DEFERRED);
        assertThat(there.everything).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {500, 502, 503, 504, 408, 409})
    void that_answers_with_trouble_may_have_done_it(int status) {
        there.says(status, "trouble");

        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(ints = {401, 403, 404, 429})
    void that_does_not_let_us_in_has_not_done_it(int status) {
        there.says(status, "no");

        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.DEFERRED);
    }

    @Test
    void that_says_no_has_refused() {
        there.says(422, "no such valve");

        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.REFUSED);
    }

    @Test
    void that_hangs_up_may_have_done_it() {
        there.hangsUp();

        assertThat(ask().outcome()).isEqualTo(Attempt.Outcome.UNKNOWN);
    }

    @Test
    void that_is_down_has_not_done_it() {
        Relay relay = relay();
        there.close();

        assertThat(relay.ask(ID, "mesa-9", ASKED, EXPIRES).outcome()).isEqualTo(Attempt.Outcome.DEFERRED);
    }

    @Test
    void is_given_no_more_time_than_a_try_may_take() {
        assertThat(Relay.LONGEST).isLessThan(Duration.ofSeconds(10));
    }
}
