package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.http.HttpSettings.Reading;
import yardlight.channels.web.Reply;
import yardlight.channels.web.Reply.Answer;

class VerdictTest {

    private static Attempt of(Reading reading, Reply reply) {
        return new Verdict(reading, false, words -> words).of(reply);
    }

    private static Attempt of(int status) {
        return of(Settings.ANY, answer(status, "in its own words"));
    }

    private static Answer answer(int status, String body) {
        return answer(status, Map.of(), body, true);
    }

    private static Answer answer(int status, Map<String, List<String>> headers, String body, boolean whole) {
        return new Answer(
                status, HttpHeaders.of(headers, (n, v) -> true), body.getBytes(StandardCharsets.UTF_8), whole);
    }

    private static Reading taken(Sign sign) {
        return new Reading(Set.of(), Set.of(), Optional.of(sign), Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(ints = {200, 201, 202, 204, 299})
    void any_success_is_accepted(int status) {
        assertThat(of(status)).isEqualTo(Attempt.accepted(status + " in its own words"));
    }

    @Test
    void a_success_other_than_the_one_agreed_on_leaves_a_doubt() {
        var reading = new Reading(Set.of(202), Set.of(), Optional.empty(), Optional.empty());

        assertThat(of(reading, answer(202, "")).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(of(reading, answer(200, "")).outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    /** RFC 9110 15.5: who we are, where and how we ask. */
    @ParameterizedTest
    @ValueSource(ints = {401, 402, 403, 404, 405, 407, 410, 415, 426})
    void what_is_wrong_with_us_is_never_held_against_the_line(int status) {
        assertThat(of(status).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(of(status).general()).isTrue();
    }

    /** RFC 9110 15.6 and 15.4. */
    @ParameterizedTest
    @ValueSource(ints = {500, 501, 502, 503, 504, 599, 301, 302, 304, 307, 308})
    void trouble_of_the_provider_and_a_redirect_put_everything_off(int status) {
        assertThat(of(status).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(of(status).general()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {400, 406, 409, 411, 413, 414, 418, 422, 451, 499})
    void any_other_complaint_is_about_the_message(int status) {
        assertThat(of(status)).isEqualTo(Attempt.refused(status + " in its own words"));
    }

    @Test
    void a_complaint_can_be_told_to_pass() {
        var reading = new Reading(Set.of(), Set.of(400), Optional.empty(), Optional.empty());

        assertThat(of(reading, answer(400, "queue full"))).isEqualTo(Attempt.deferred("400 queue full"));
        assertThat(of(reading, answer(422, "")).outcome()).isEqualTo(Outcome.REFUSED);
    }

    /** RFC 9110 15.5.9, RFC 8470 5.2, RFC 6585 4. */
    @ParameterizedTest
    @ValueSource(ints = {408, 425, 429})
    void later_means_later_for_this_message(int status) {
        assertThat(of(status)).isEqualTo(Attempt.deferred(status + " in its own words"));
    }

    /** draft-ietf-httpapi-idempotency-key-header, 2.7 (memory). */
    @Test
    void a_conflict_with_itself_means_later_where_the_provider_knows_the_id() {
        assertThat(new Verdict(Settings.ANY, true, words -> words).of(answer(409, "in hand")))
                .isEqualTo(Attempt.deferred("409 in hand"));
    }

    @ParameterizedTest
    @ValueSource(ints = {429, 503})
    void the_time_that_was_asked_for_is_kept(int status) {
        Attempt attempt = of(Settings.ANY, answer(status, Map.of("Retry-After", List.of("120")), "", true));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.retryAfter()).contains(Duration.ofMinutes(2));
        assertThat(attempt.general()).isEqualTo(status == 503);
    }

    @Test
    void silence_is_a_doubt_only_if_the_request_was_out() {
        assertThat(of(Settings.ANY, new Reply.Silence(false, "refused")))
                .isEqualTo(Attempt.deferred("refused").forEveryMessage());
        assertThat(of(Settings.ANY, new Reply.Silence(true, "hung up")))
                .isEqualTo(Attempt.unknown("sent, but not confirmed: hung up").forEveryMessage());
    }

    @Test
    void a_value_in_the_body_decides_where_the_status_says_too_little() {
        Reading reading = taken(new Sign.Value("/result/0/code", Set.of("0", "7"), Set.of("13")));

        assertThat(of(reading, answer(200, "{\"result\":[{\"code\":0}]}")).outcome())
                .isEqualTo(Outcome.ACCEPTED);
        assertThat(of(reading, answer(200, "{\"result\":[{\"code\":\"7\"}]}")).outcome())
                .isEqualTo(Outcome.ACCEPTED);
        assertThat(of(reading, answer(200, "{\"result\":[{\"code\":13}]}")).outcome())
                .isEqualTo(Outcome.REFUSED);
        assertThat(of(reading, answer(200, "{\"result\":[{\"code\":99}]}")).outcome())
                .isEqualTo(Outcome.DEFERRED);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "fine",
                "{\"result\":[]}",
                "{\"result\":[{\"code\":null}]}",
                "{\"result\":[{\"code\":{}}]}",
                "{"
            })
    void an_answer_without_that_value_leaves_a_doubt(String body) {
        Reading reading = taken(new Sign.Value("/result/0/code", Set.of("0"), Set.of()));

        assertThat(of(reading, answer(200, body)).outcome()).isEqualTo(Outcome.UNKNOWN);
    }

    @Test
    void words_in_the_body_decide_likewise() {
        Reading reading = taken(new Sign.Words(Pattern.compile("^OK"), Optional.of(Pattern.compile("BAD NUMBER"))));

        assertThat(of(reading, answer(200, "OK 4711")).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(of(reading, answer(200, "ERR 3 BAD NUMBER")).outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(of(reading, answer(200, "ERR 9 QUEUE FULL")).outcome()).isEqualTo(Outcome.DEFERRED);
    }

    @Test
    void half_an_answer_leaves_a_doubt_only_if_its_body_matters() {
        Answer half = answer(200, Map.of(), "{\"code\":", false);

        assertThat(of(Settings.ANY, half).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(of(taken(new Sign.Value("/code", Set.of("0"), Set.of())), half)
                        .outcome())
                .isEqualTo(Outcome.UNKNOWN);
        assertThat(of(taken(new Sign.Words(Pattern.compile("OK"), Optional.empty())), half)
                        .outcome())
                .isEqualTo(Outcome.UNKNOWN);
    }

    @Test
    void what_the_provider_calls_the_message_is_kept() {
        var pointer = new Reading(
                Set.of(), Set.of(), Optional.empty(), Optional.of(new Whereabouts.AtPointer("/messages/0/id")));
        var header = new Reading(Set.of(), Set.of(), Optional.empty(), Optional.of(new Whereabouts.InHeader("X-Id")));

        assertThat(of(pointer, answer(201, "{\"messages\":[{\"id\":4711}]}")).reference())
                .contains("4711");
        assertThat(of(header, answer(202, Map.of("x-id", List.of("m-47")), "", true))
                        .reference())
                .contains("m-47");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "{\"id\":\"\"}", "{\"id\":\"a\\nb\"}", "{\"id\":{}}", "taken"})
    void a_name_that_cannot_be_one_is_left_out_and_the_message_taken_all_the_same(String body) {
        var reading = new Reading(Set.of(), Set.of(), Optional.empty(), Optional.of(new Whereabouts.AtPointer("/id")));

        Attempt attempt = of(reading, answer(200, body));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(attempt.reference()).isEmpty();
    }
}
