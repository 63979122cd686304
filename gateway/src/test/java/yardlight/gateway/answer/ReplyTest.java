package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReplyTest {

    @ParameterizedTest
    @CsvSource({"OK 47, 47", "ok 47, 47", " Ok47 , 47", "ok #47., 47", "OK  7!, 7"})
    void with_a_code_means_one_call(String text, int code) {
        assertThat(Reply.of(text)).isEqualTo(new Reply(Reply.Kind.ONE, Optional.of(code)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"OK", "ok", "Ok.", " ok! "})
    void without_a_code_means_the_only_call(String text) {
        assertThat(Reply.of(text).kind()).isEqualTo(Reply.Kind.ONLY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ALL", "all", "ok all", "All."})
    void of_all_means_every_call(String text) {
        assertThat(Reply.of(text).kind()).isEqualTo(Reply.Kind.ALL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "what?", "not ok", "ok 47 48", "47", "ok maybe", "ok 12345678901", "stop"})
    void that_could_mean_anything_means_nothing(String text) {
        assertThat(Reply.of(text).kind()).isEqualTo(Reply.Kind.UNCLEAR);
    }
}
