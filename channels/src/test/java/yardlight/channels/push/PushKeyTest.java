package yardlight.channels.push;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.web.Limits;

class PushKeyTest {

    /** Many times: a private number that is short by chance is kept in as many bytes. */
    @RepeatedTest(300)
    void is_the_same_after_it_was_kept() {
        byte[] kept = PushKey.fresh();

        PushKey key = PushKey.of(kept);

        assertThat(kept).hasSize(97);
        assertThat(key.applicationServerKey()).matches("[\\w-]{87}");
        assertThat(Browser.bytes(key.applicationServerKey())).startsWith(4);
        assertThat(key.keys().getPrivateKey().getS().bitLength()).isLessThanOrEqualTo(256);
    }

    @Test
    void does_not_give_its_private_half_away() {
        assertThat(PushKey.of(PushKey.fresh()).toString()).matches("PushKey\\[[\\w-]{87}]");
    }

    @Test
    void is_not_anything_else() {
        assertThatThrownBy(() -> PushKey.of(new byte[32])).hasMessage("push key must be 97 bytes, and has 32");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yard@ranch.example", "http://ranch.example", "mailto:", "mailto:a b@c.example"})
    void goes_with_a_contact_that_a_service_can_reach(String contact) {
        PushKey key = PushKey.of(PushKey.fresh());

        assertThatThrownBy(() -> new PushSettings(key, contact, Duration.ofHours(1), Limits.USUAL, false))
                .hasMessage("contact must begin with mailto: or https://: " + contact);
    }

    @Test
    void goes_with_a_life_that_a_service_can_keep() {
        PushKey key = PushKey.of(PushKey.fresh());

        assertThatThrownBy(
                        () -> new PushSettings(key, "https://ranch.example", Duration.ofDays(29), Limits.USUAL, false))
                .hasMessage("life must be from 0 s to 28 days: PT696H");
    }
}
