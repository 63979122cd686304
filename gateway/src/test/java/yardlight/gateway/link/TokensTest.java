package yardlight.gateway.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.wording.Gsm7;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

@GatewayTest
class TokensTest {

    private final Tokens tokens;

    TokensTest(Tokens tokens) {
        this.tokens = tokens;
    }

    @Test
    void give_the_same_notice_the_same_link_and_another_one_another() {
        assertThat(sent("n.1")).isEqualTo(sent("n.1")).isNotEqualTo(sent("n.2"));
    }

    @Test
    void are_hidden_from_the_engine_by_a_mask_that_every_alphabet_of_texts_can_write() {
        String masked = tokens.answer("n.1").orElseThrow();

        assertThat(masked).isEqualTo("https://yardlight.example/a/" + "*".repeat(22));
        assertThat(Gsm7.encodable(masked)).isTrue();
    }

    @Test
    void make_a_link_under_the_public_address_that_takes_no_more_room_than_its_mask() {
        assertThat(sent("n.1"))
                .matches("TANK HIGH\\. Reply OK 47 or https://yardlight\\.example/a/[A-Za-z0-9_-]{22}")
                .endsWith(tokens.token("n.1", TestGateway.NOW));
        assertThat(Gsm7.septets(sent("n.1")))
                .isEqualTo(Gsm7.septets(stored("n.1").text()));
    }

    private String sent(String notice) {
        return tokens.text(stored(notice));
    }

    private Notice stored(String notice) {
        return Notice.made(notice, "ana", List.of("c.1"), Priority.HIGH, TestGateway.NOW)
                .queued("TANK HIGH. Reply OK 47 or " + tokens.answer(notice).orElseThrow());
    }

    @Test
    void are_stored_under_a_hash_that_does_not_show_them() {
        String token = tokens.token("n.1", TestGateway.NOW);

        assertThat(Tokens.hash(token)).contains(tokens.hashFor("n.1", TestGateway.NOW));
        assertThat(tokens.hashFor("n.1", TestGateway.NOW)).hasSize(64).doesNotContain(token);
    }

    @Test
    void that_cannot_be_ours_are_not_even_looked_up() {
        assertThat(Tokens.hash("short")).isEmpty();
        assertThat(Tokens.hash("x".repeat(23))).isEmpty();
        assertThat(Tokens.hash("../../../etc/passwd/xx")).isEmpty();
    }
}
