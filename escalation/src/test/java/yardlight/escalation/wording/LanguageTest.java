package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LanguageTest {

    @Test
    void is_named_by_the_word_of_the_setup() {
        assertThat(Language.of("en")).contains(Language.EN);
        assertThat(Language.of("es")).contains(Language.ES);
        assertThat(Language.of("fr")).isEmpty();
        assertThat(Language.ES.word()).isEqualTo("es");
    }
}
