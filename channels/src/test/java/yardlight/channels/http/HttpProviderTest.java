package yardlight.channels.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.http.HttpSettings.Form;
import yardlight.channels.http.HttpSettings.Reading;

/** Providers of several kinds, all made up, on the JDK's own HTTP server. */
class HttpProviderTest {

    private StandInProvider provider;

    @BeforeEach
    void open() throws IOException {
        provider = new StandInProvider();
    }

    @AfterEach
    void close() {
        provider.close();
    }

    private static Message message(String address, String text) {
        return new Message("callout-7.2", address, text, Instant.parse("2026-11-25T09:13:00Z"));
    }

    private static Channel channel(HttpSettings settings) {
        return HttpChannel.of("voice", Optional.of(settings));
    }

    @Test
    void one_that_wants_a_form_and_answers_with_an_id() {
        provider.says(201, "{\"messages\":[{\"id\":\"m-47\",\"status\":\"queued\"}]}");
        Form form = new Form(
                "POST",
                provider.url("/send"),
                Map.of("Accept", "application/json", "X-Sent", "{at}"),
                "application/x-www-form-urlencoded",
                "to={to}&say={text}",
                Optional.empty());
        Reading reading = new Reading(
                Set.of(),
                Set.of(),
                Optional.of(new Sign.Value("/messages/0/status", Set.of("queued"), Set.of())),
                Optional.of(new Whereabouts.AtPointer("/messages/0/id")));

        Attempt attempt = channel(Settings.with(form, reading)).send(message("+15755550101", "MESA 9 & 10"));

        assertThat(attempt.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(attempt.reference()).contains("m-47");
        StandInProvider.Asked asked = provider.messages.get(0);
        assertThat(asked.body()).isEqualTo("to=%2B15755550101&say=MESA%209%20%26%2010");
        assertThat(asked.header("Content-Type")).isEqualTo("application/x-www-form-urlencoded");
        assertThat(asked.header("Accept")).isEqualTo("application/json");
        assertThat(asked.header("X-Sent")).isEqualTo("2026-11-25T09:13:00Z");
        assertThat(asked.header("User-Agent")).isEqualTo("yardlight");
    }

    @Test
    void one_that_wants_everything_in_the_address() {
        Channel channel = channel(Settings.of(Settings.get(provider.url("/send/{to}?text={text}"))));

        assertThat(channel.send(message("5755550101", "one two")).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(provider.messages.get(0).method()).isEqualTo("GET");
        assertThat(provider.messages.get(0).target()).isEqualTo("/send/5755550101?text=one%20two");
        assertThat(provider.messages.get(0).body()).isEmpty();
    }

    @Test
    void one_for_chats_whose_rooms_are_no_telephone_numbers() {
        Form form = new Form("PUT", provider.url("/rooms/{to}"), Map.of(), "text/plain", "{text}", Optional.empty());
        Channel channel = channel(Settings.with(form, Settings.ANY, Pattern.compile("[a-z-]+")));

        assertThat(channel.complaintAbout("night-crew")).isEmpty();
        assertThat(channel.complaintAbout("+15755550101"))
                .contains("not one address as http-voice has them: +15755550101");
        assertThat(channel.send(message("night-crew", "se\u00f1al")).outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(provider.messages.get(0).body()).isEqualTo("se\u00f1al");
    }

    @Test
    void an_address_is_one_whatever_the_pattern_lets_through() {
        Form form = new Form("PUT", provider.url("/rooms/{to}"), Map.of(), "text/plain", "{text}", Optional.empty());
        Channel channel = channel(Settings.with(form, Settings.ANY, Pattern.compile("(?s).*")));

        for (String bad : new String[] {"", "a b", "a,b", "a;b", "a\r\nb", "\u00e1", "..", ".", "a".repeat(255)}) {
            assertThat(channel.complaintAbout(bad)).isPresent();
        }
    }

    @Test
    void one_that_asks_for_time() {
        provider.says(429, Map.of("Retry-After", "30"), "slow down");

        Attempt attempt =
                channel(Settings.of(Settings.json(provider.url("/"), "{}"))).send(message("5755550101", "one"));

        assertThat(attempt).isEqualTo(Attempt.deferred("429 slow down", Duration.ofSeconds(30)));
    }

    @Test
    void one_that_does_not_know_us_makes_the_channel_troubled_until_it_does() {
        Channel channel = channel(Settings.of(Settings.json(provider.url("/"), "{}")));
        provider.says(401, "who are you?");

        assertThat(channel.send(message("5755550101", "one")).general()).isTrue();
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(channel.health().sentence()).contains("127.0.0.1").contains("401 who are you?");

        provider.says(202, "");
        channel.send(message("5755550101", "one"));
        assertThat(channel.health().state()).isEqualTo(Health.State.READY);
    }

    @Test
    void a_knock_shows_the_secret_and_no_message() {
        Form form = Settings.json(provider.url("/v2/{to}/send?x={id}"), "{\"text\":\"{text}\"}");

        assertThat(channel(Settings.of(form)).knock()).isEmpty();

        StandInProvider.Asked asked = provider.everything.get(0);
        assertThat(asked.method()).isEqualTo("OPTIONS");
        assertThat(asked.target()).isEqualTo("/v2/");
        assertThat(asked.body()).isEmpty();
        assertThat(asked.header("Authorization")).isEqualTo("Bearer " + Settings.SECRET);
    }

    @Test
    void a_knock_can_have_an_address_of_its_own_which_must_then_answer_well() {
        HttpSettings usual = Settings.of(Settings.json(provider.url("/send"), "{}"));
        Channel channel = channel(new HttpSettings(
                usual.form(),
                usual.authentication(),
                usual.secret(),
                usual.reading(),
                usual.address(),
                Optional.of(provider.url("/account?x=1")),
                usual.limits()));

        assertThat(channel.knock()).isEmpty();
        assertThat(provider.everything.get(0).method()).isEqualTo("GET");
        assertThat(provider.everything.get(0).target()).isEqualTo("/account?x=1");

        provider.says(404, "no such account");
        assertThat(channel.knock()).contains("404 no such account");
    }
}
