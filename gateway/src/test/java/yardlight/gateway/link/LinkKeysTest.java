package yardlight.gateway.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import yardlight.db.secret.Secret;
import yardlight.db.secret.Secrets;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** OWASP ASVS 5.0, 11.2.2: a key can be replaced, here without a link in a text that is out being lost. */
@GatewayTest
class LinkKeysTest {

    private static final Instant START = TestGateway.NOW.plus(Duration.ofDays(400));

    private final Doors doors;
    private final Secrets secrets;
    private final AtomicReference<Instant> now = new AtomicReference<>(START);
    private final LinkKeys keys;

    LinkKeysTest(Doors doors, Secrets secrets) {
        this.doors = doors;
        this.secrets = secrets;
        this.keys = another();
    }

    private LinkKeys another() {
        return new LinkKeys(secrets, (InstantSource) now::get);
    }

    @BeforeEach
    void one_key() {
        keys.instead();
    }

    @Test
    void go_on_for_what_was_made_before_another_one_took_over() {
        byte[] first = keys.at(START);

        Instant from = keys.another();

        assertThat(from).isEqualTo(START.plus(LinkKeys.KNOWN));
        assertThat(keys.at(START)).isEqualTo(first);
        assertThat(keys.at(from.minusMillis(1))).isEqualTo(first);
        assertThat(keys.at(from)).isNotEqualTo(first);
    }

    @Test
    void are_heard_of_by_every_other_gateway_before_they_are_used() {
        LinkKeys elsewhere = another();
        Instant from = keys.another();

        now.set(from);

        assertThat(elsewhere.at(from)).isEqualTo(keys.at(from));
    }

    @Test
    void are_forgotten_when_every_link_that_they_made_has_ended() {
        byte[] first = keys.at(START);
        Instant from = keys.another();
        now.set(from.plus(Tokens.LIFE).plusSeconds(1));

        keys.another();

        assertThat(secrets.generations("links"))
                .extracting(Secret::content)
                .hasSize(2)
                .doesNotContain(first);
    }

    @Test
    void take_the_place_of_all_others_at_once_when_one_was_seen() {
        byte[] first = keys.at(START);
        keys.another();

        keys.instead();

        assertThat(secrets.generations("links")).hasSize(1);
        assertThat(keys.at(START)).isNotEqualTo(first);
        assertThat(keys.at(Instant.EPOCH)).isEqualTo(keys.at(START));
    }

    @Test
    void are_replaced_by_the_owner_and_shown_to_nobody() {
        assertThat(doors.as("owner", HttpMethod.POST, "/api/v1/link-keys")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"endOthers\": \"yes\"}"))
                .hasStatus(422);

        assertThat(doors.as("owner", HttpMethod.POST, "/api/v1/link-keys"))
                .hasStatus(201)
                .bodyJson()
                .extractingPath("$")
                .asMap()
                .containsOnlyKeys("from");
    }
}
