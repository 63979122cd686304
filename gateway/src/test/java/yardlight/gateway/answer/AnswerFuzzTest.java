package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import yardlight.escalation.Fixtures;
import yardlight.escalation.reply.ReplyReader;
import yardlight.gateway.link.Tokens;

/** What people send back, by bytes that look for new ways through the code. */
class AnswerFuzzTest {

    @FuzzTest(maxDuration = "5m")
    void reply(byte[] input) {
        assertThat(ReplyReader.read(new String(input, StandardCharsets.UTF_8))).isNotNull();
    }

    @FuzzTest(maxDuration = "5m")
    void sender(byte[] input) {
        assertThat(new Sender(new String(input, StandardCharsets.UTF_8)).among(Fixtures.theSetup()))
                .isNotNull();
    }

    @FuzzTest(maxDuration = "5m")
    void token(byte[] input) {
        Tokens.hash(new String(input, StandardCharsets.UTF_8))
                .ifPresent(hash -> assertThat(hash).hasSize(64));
    }
}
