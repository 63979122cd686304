package yardlight.escalation.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LanguageTest {

    @Test
    void a_language_is_found_by_the_word_of_the_contract_only() {
        assertThat(Language.of("en")).contains(Language.EN);
        assertThat(Language.of("es")).contains(Language.ES);
        assertThat(Language.of("EN")).isEmpty();
        assertThat(Language.of("fr")).isEmpty();
    }
}
