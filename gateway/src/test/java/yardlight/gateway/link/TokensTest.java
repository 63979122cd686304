package yardlight.gateway.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yardlight.gateway.GatewayTest;

@GatewayTest
class TokensTest {

    private final Tokens tokens;

    TokensTest(Tokens tokens) {
        this.tokens = tokens;
    }

    @Test
    void give_the_same_notice_the_same_link_and_another_one_another() {
        assertThat(tokens.answer("n.1")).isEqualTo(tokens.answer("n.1")).isNotEqualTo(tokens.answer("n.2"));
    }

    @Test
    void make_a_link_short_enough_for_a_text_under_the_public_address() {
        assertThat(tokens.answer("n.1").orElseThrow()).matches("https://yardlight\\.example/a/[A-Za-z0-9_-]{22}");
    }

    @Test
    void are_stored_under_a_hash_that_does_not_show_them() {
        String token = tokens.token("n.1");

        assertThat(Tokens.hash(token)).contains(tokens.hashFor("n.1"));
        assertThat(tokens.hashFor("n.1")).hasSize(64).doesNotContain(token);
    }

    @Test
    void that_cannot_be_ours_are_not_even_looked_up() {
        assertThat(Tokens.hash("short")).isEmpty();
        assertThat(Tokens.hash("x".repeat(23))).isEmpty();
        assertThat(Tokens.hash("../../../etc/passwd/xx")).isEmpty();
    }
}
