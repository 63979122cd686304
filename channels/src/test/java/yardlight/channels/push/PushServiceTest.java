package yardlight.channels.push;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.Message;

/** What a push service and the browser behind it see, and what becomes of what they say. */
class PushServiceTest {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String KEYS = "|" + Browser.KEY + "|" + Browser.SECRET;

    private final PushSettings settings = PushChannelTest.settings();
    private final PushChannel channel = PushChannel.of(Optional.of(settings));
    private StandInService service;

    @BeforeEach
    void open() throws IOException {
        service = new StandInService();
    }

    @AfterEach
    void close() {
        service.close();
    }

    private static Message message(String address, String text) {
        return new Message("callout-7.2", address, text, Instant.parse("2026-11-25T09:13:00Z"));
    }

    private Attempt send(String text) {
        return channel.send(message(service.subscription(), text));
    }

    @Test
    void a_note_is_read_by_the_browser_as_it_was_written() {
        send("MESA 9 WATER TANK HIGH \"18.4 ft\" se\u00f1al \ud83d\udca7\r\n</script>");

        JsonNode note = JSON.readTree(service.pushed.get(0).note());
        assertThat(note.get("id").stringValue()).isEqualTo("callout-7.2");
        assertThat(note.get("text").stringValue())
                .isEqualTo("MESA 9 WATER TANK HIGH \"18.4 ft\" se\u00f1al \ud83d\udca7\r\n</script>");
        assertThat(note.get("at").stringValue()).isEqualTo("2026-11-25T09:13:00Z");
    }

    /** RFC 8030 5 and RFC 8188 2.1 (read, second hand). */
    @Test
    void the_service_is_told_how_urgent_it_is_how_long_it_counts_and_what_it_replaces() {
        send("one");
        send("one again");

        StandInService.Pushed pushed = service.pushed.get(0);
        assertThat(pushed.target()).isEqualTo("/p/JzLQ3raZJfFBR0aqvOMsLrt54w4rJUsV");
        assertThat(pushed.header("TTL")).isEqualTo("3600");
        assertThat(pushed.header("Urgency")).isEqualTo("high");
        assertThat(pushed.header("Content-Encoding")).isEqualTo("aes128gcm");
        assertThat(pushed.header("Topic"))
                .matches("[A-Za-z0-9_-]{32}")
                .isEqualTo(service.pushed.get(1).header("Topic"))
                .isNotEqualTo(Note.topic("callout-7.3"));
    }

    /** RFC 8292 2: the origin, no more than 24 hours, and whom to ask; 3: with our key. */
    @Test
    void the_service_is_shown_who_sends() throws GeneralSecurityException {
        send("one");

        Token token = Token.in(service.pushed.get(0).header("Authorization"));
        long now = Instant.now().getEpochSecond();
        assertThat(token.claims().get("aud").stringValue()).isEqualTo(service.origin());
        assertThat(token.claims().get("sub").stringValue()).isEqualTo("mailto:yard@ranch.example");
        assertThat(token.claims().get("exp").longValue()).isBetween(now + 60, now + 86_400);
        assertThat(token.key()).isEqualTo(settings.key().applicationServerKey());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "\u00f1", "\ud83d\udca7", "\"", "\u0001"})
    void a_long_text_is_cut_to_what_every_service_takes(String letter) {
        assertThat(send(letter.repeat(6_000)).outcome()).isEqualTo(Outcome.ACCEPTED);

        StandInService.Pushed pushed = service.pushed.get(0);
        String text = JSON.readTree(pushed.note()).get("text").stringValue();
        assertThat(pushed.length()).isBetween(4_080, 4_096);
        assertThat(text).endsWith(letter + "...");
        assertThat(text.replace("...", "").replace(letter, "")).isEmpty();
    }

    /** RFC 8030 7.3 and 5.2. */
    @ParameterizedTest
    @ValueSource(ints = {404, 410})
    void a_subscription_that_is_over_is_refused(int status) {
        service.says(status, Map.of(), "gone");

        assertThat(send("one")).isEqualTo(Attempt.refused("the subscription is over: " + status + " gone"));
    }

    @ParameterizedTest
    @ValueSource(ints = {400, 403, 413})
    void what_will_never_pass_is_refused_so_that_the_next_line_has_it_at_once(int status) {
        service.says(status, Map.of(), "no");

        assertThat(send("one").outcome()).isEqualTo(Outcome.REFUSED);
    }

    @ParameterizedTest
    @ValueSource(ints = {429, 503})
    void a_service_that_asks_for_time_gets_it(int status) {
        service.says(status, Map.of("Retry-After", "30"), "slow down");

        assertThat(send("one").retryAfter()).contains(Duration.ofSeconds(30));
    }

    @Test
    void one_service_that_is_down_does_not_keep_messages_from_another() throws IOException {
        try (StandInService other = new StandInService()) {
            send("one");
            channel.send(message(other.subscription(), "one"));

            service.isAway();
            assertThat(send("two").outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(send("two").general()).isFalse();
            assertThat(channel.health().state()).isEqualTo(Health.State.READY);
            other.isAway();
            assertThat(channel.send(message(other.subscription(), "two")).general())
                    .isTrue();

            assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
            assertThat(channel.knock()).contains("503 away");
            assertThat(channel.knock()).contains("503 away");
        }
    }

    @Test
    void a_line_that_leads_to_nobody_says_nothing_of_the_others() {
        StandInService gone = service;
        gone.close();

        assertThat(send("one").outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(send("one").general()).isFalse();
        assertThat(channel.knock()).isEmpty();
    }

    /** The name is public, and leads inside: the classic way to make a server ask its neighbours. */
    @ParameterizedTest
    @ValueSource(
            strings = {"127.0.0.1", "10.1.2.3", "192.168.1.1", "169.254.169.254", "::1", "fd00::1", "::ffff:10.0.0.1"})
    void a_public_name_that_leads_into_a_network_of_ours_is_refused_unasked(String address) {
        var inside = new PushChannel(Optional.of(settings), host -> new InetAddress[] {InetAddress.getByName(address)});

        Attempt attempt = inside.send(message("https://push.example/p/1" + KEYS, "one"));

        assertThat(attempt).isEqualTo(Attempt.refused("an endpoint that leads to a network of ours: push.example"));
    }

    @Test
    void the_gateway_itself_is_refused_under_its_public_name_and_at_every_address_of_its_machine() throws IOException {
        var own = new PushSettings(
                settings.key(),
                settings.contact(),
                settings.life(),
                settings.limits(),
                false,
                Optional.of("yl.example"));
        List<InetAddress> here = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .toList();

        assertThat(new PushChannel(Optional.of(own), host -> new InetAddress[] {InetAddress.getByName("9.255.255.255")})
                        .send(message("https://YL.example/api/v1/events" + KEYS, "one")))
                .isEqualTo(Attempt.refused("an endpoint that leads back to this gateway: YL.example"));
        assertThat(here)
                .isNotEmpty()
                .allSatisfy(address -> assertThat(new PushChannel(Optional.of(own), host -> new InetAddress[] {address})
                                .send(message("https://push.example/p" + KEYS, "one"))
                                .outcome())
                        .isEqualTo(Outcome.REFUSED));
    }

    @Test
    void one_of_several_addresses_is_enough_for_that() {
        var inside = new PushChannel(Optional.of(settings), host ->
                new InetAddress[] {InetAddress.getByName("9.255.255.255"), InetAddress.getByName("10.0.0.1")});

        assertThat(inside.send(message("https://push.example/p/1" + KEYS, "one"))
                        .outcome())
                .isEqualTo(Outcome.REFUSED);
    }

    @Test
    void a_name_that_nobody_knows_is_put_off() {
        assertThat(channel.send(message("https://push.example/p/1" + KEYS, "one")))
                .isEqualTo(Attempt.deferred("no host is known as push.example"));
    }
}
