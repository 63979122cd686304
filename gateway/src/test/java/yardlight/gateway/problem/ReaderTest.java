package yardlight.gateway.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

class ReaderTest {

    @ParameterizedTest
    @ValueSource(strings = {"text/html", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8"})
    void is_a_person_when_a_page_is_asked_for_by_name(String accept) {
        assertThat(Reader.wantsPage(accept)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"*/*", "application/json", "text/*", "application/json, text/html", "rubbish", ""})
    void is_a_program_otherwise(String accept) {
        assertThat(Reader.wantsPage(accept)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "*/* | application/json",
                "text/csv | text/csv",
                "text/csv;q=0.5, application/json | application/json",
                "text/* | text/csv",
                "image/png | application/json",
                "rubbish | application/json"
            })
    void gets_the_type_that_suits_best(String accept, String type) {
        var request = new MockHttpServletRequest();
        request.addHeader("Accept", accept);

        assertThat(Reader.choose(request, "application/json", "text/csv")).isEqualTo(type);
    }
}
