package yardlight.channels;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt.Outcome;

/** What every channel keeps, the fake one too. */
public abstract class ChannelContract {

    /**
     * What the other side got.
     *
     * @param identity by which the other side could tell that it is the same message again
     */
    public record Arrival(String identity, String address, String text) {}

    /** So many that threads that share a connection where they must not are caught at it. */
    private static final int MANY = 2_000;

    protected static final Instant AT = Instant.parse("2026-11-25T09:13:00Z");

    /** Set up to reach the outside of this test, which takes everything unless told otherwise. */
    protected abstract Channel channel();

    protected abstract Channel notConfigured();

    /** The outside answers every message so, in these words. */
    protected abstract void outsideSays(Outcome outcome, String words);

    /** The outside breaks the connection before it could have taken anything. */
    protected abstract void outsideCuts();

    /** The outside takes nothing from anybody. */
    protected abstract void outsideIsAway();

    /** In order. */
    protected abstract List<Arrival> arrivals();

    /** An address that the channel takes. */
    protected abstract String address();

    private Message message(String text) {
        return new Message("callout-7.2", address(), text, AT);
    }

    @Test
    void hands_over_one_message_to_one_address() {
        Attempt attempt = channel().send(message("MESA 9 WATER TANK HIGH"));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(arrivals()).singleElement().satisfies(arrival -> {
            assertThat(arrival.address()).isEqualTo(address());
            assertThat(arrival.text()).startsWith("MESA 9 WATER TANK HIGH");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"ACCEPTED", "REFUSED", "DEFERRED", "UNKNOWN"})
    void reports_what_the_outside_did(Outcome outcome) {
        outsideSays(outcome, "in its own words");

        Attempt attempt = channel().send(message("one"));

        assertThat(attempt.outcome()).isEqualTo(outcome);
        assertThat(attempt.detail()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ACCEPTED", "REFUSED", "DEFERRED"})
    void quotes_the_outside(Outcome outcome) {
        outsideSays(outcome, "in its own words");

        assertThat(channel().send(message("one")).detail()).contains("in its own words");
    }

    @Test
    void defers_what_was_cut_before_it_could_be_taken() {
        outsideCuts();

        Attempt attempt = channel().send(message("one"));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.detail()).isNotBlank();
        assertThat(arrivals()).isEmpty();
    }

    @Test
    void says_that_every_message_would_have_fared_like_this_one() {
        outsideIsAway();

        Attempt attempt = channel().send(message("one"));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(channel().health().state()).isEqualTo(Health.State.TROUBLED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ACCEPTED", "REFUSED", "DEFERRED"})
    void does_not_blame_the_carrier_for_what_is_about_the_line(Outcome outcome) {
        outsideSays(outcome, "in its own words");

        assertThat(channel().send(message("one")).general()).isFalse();
    }

    @Test
    void knocks_without_a_message() {
        assertThat(channel().knock()).isEmpty();
        assertThat(channel().health().state()).isEqualTo(Health.State.READY);

        outsideIsAway();

        assertThat(channel().knock()).hasValueSatisfying(why -> assertThat(why).isNotBlank());
        assertThat(channel().health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(arrivals()).isEmpty();
        try (Channel channel = notConfigured()) {
            assertThat(channel.knock()).isPresent();
        }
        channel().close();
        assertThat(channel().knock()).isPresent();
    }

    @Test
    void makes_everything_wait_while_it_is_not_set_up() {
        try (Channel channel = notConfigured()) {
            assertThat(channel.send(message("one")).outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(channel.health().state()).isEqualTo(Health.State.NOT_CONFIGURED);
            assertThat(channel.health().sentence()).isNotBlank();
            assertThat(arrivals()).isEmpty();
        }
    }

    @Test
    void is_in_good_health_when_it_is_set_up_and_nothing_failed() {
        assertThat(channel().health().state()).isEqualTo(Health.State.READY);

        channel().send(message("one"));

        assertThat(channel().health().state()).isEqualTo(Health.State.READY);
        assertThat(channel().health().sentence()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "one\r\n.\r\nMAIL FROM:<x@evil.example>\r\nRCPT TO:<y@evil.example>\r\nDATA\r\n",
                "one\r\nBcc: x@evil.example\r\n\r\nbody",
                "one\n.\ntwo",
                "one\r.\rtwo",
                ".starts with a dot",
                "one\u0000\u001b[2J\u0007\u202e\u2028two",
                "\ud83d\udca7 \ud83d one",
                ""
            })
    void takes_any_text_and_makes_one_message_of_it(String text) {
        Attempt attempt = channel().send(message(text));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(arrivals())
                .singleElement()
                .satisfies(arrival -> assertThat(arrival.address()).isEqualTo(address()));
    }

    @Test
    void takes_a_text_of_a_hundred_thousand_characters_in_one_line() {
        assertThat(channel().send(message("long".repeat(25_000))).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(arrivals()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "ana@example.org\r\nBcc: x@evil.example",
                "ana@example.org\nRCPT TO:<x@evil.example>",
                "ana@example.org\u0000",
                "ana@example.org,ben@example.org",
                "ana@example.org; ben@example.org",
                "ana@example.org ben@example.org",
                "\u00e1na@example.org"
            })
    void refuses_an_address_that_is_not_exactly_one(String address) {
        Attempt attempt = channel().send(new Message("callout-7.2", address, "one", AT));

        assertThat(attempt.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(channel().complaintAbout(address)).isPresent();
        assertThat(arrivals()).isEmpty();
    }

    @Test
    void refuses_an_address_without_an_end() {
        String endless = address() + "a".repeat(100_000);

        Attempt attempt = channel().send(new Message("callout-7.2", endless, "one", AT));

        assertThat(attempt.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(attempt.detail().length()).isLessThanOrEqualTo(Attempt.LONGEST_DETAIL);
    }

    @Test
    void has_no_complaint_about_an_address_that_it_takes() {
        assertThat(channel().complaintAbout(address())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ACCEPTED", "REFUSED", "DEFERRED"})
    void keeps_the_detail_to_one_bounded_line(Outcome outcome) {
        outsideSays(outcome, "\u001b[31m no\tway \u0007" + "for ever and ever ".repeat(100));

        String detail = channel().send(message("one")).detail();

        assertThat(detail.length()).isBetween(1, Attempt.LONGEST_DETAIL);
        assertThat(detail).doesNotContainPattern("\\p{Cntrl}").contains("no way");
    }

    @Test
    void gives_the_same_identity_to_the_same_message_sent_again() {
        outsideSays(Outcome.UNKNOWN, "");
        channel().send(message("one"));
        outsideSays(Outcome.ACCEPTED, "fine");
        channel().send(message("one"));
        channel().send(new Message("callout-7.3", address(), "one", AT));

        List<String> identities = arrivals().stream().map(Arrival::identity).toList();
        assertThat(identities).hasSize(3);
        assertThat(identities.get(0)).isNotBlank().isEqualTo(identities.get(1)).isNotEqualTo(identities.get(2));
    }

    @Test
    void serves_many_threads_at_once_and_each_message_once() throws Exception {
        List<Callable<Attempt>> sends = IntStream.range(0, MANY)
                .<Callable<Attempt>>mapToObj(
                        i -> () -> channel().send(new Message("callout-" + i, address(), "text " + i, AT)))
                .toList();
        ExecutorService hands = Executors.newFixedThreadPool(12);
        try {
            for (Future<Attempt> done : hands.invokeAll(sends)) {
                assertThat(done.get().outcome()).isEqualTo(Outcome.ACCEPTED);
            }
        } finally {
            hands.shutdownNow();
        }

        assertThat(arrivals()).hasSize(MANY).extracting(Arrival::identity).doesNotHaveDuplicates();
    }

    @Test
    void defers_what_comes_after_it_was_closed() {
        Channel channel = channel();
        channel.send(message("one"));
        channel.close();
        channel.close();

        assertThat(channel.send(message("two")).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(arrivals()).hasSize(1);
    }

    @Test
    void has_a_name() {
        assertThat(channel().name())
                .matches("[a-z0-9-]+")
                .isEqualTo(notConfigured().name());
    }
}
