package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Contact;

class SenderTest {

    @ParameterizedTest
    @CsvSource({
        "+15755550101, ana",
        "5755550101, ana",
        "+1 (575) 555-0101, ana",
        "5755550101@txt.example, ana",
        "15755550101@other.example, ana",
        "ANA@Mesa.Example, ana",
        "+15755550102, ben"
    })
    void is_known_by_any_of_their_lines(String from, String contact) {
        assertThat(new Sender(from).among(Fixtures.theSetup()))
                .extracting(Contact::id)
                .containsExactly(contact);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "0101", "5550101", "+15755550199", "nobody@mesa.example", "ana", "ana@mesa.example.org"})
    void is_not_taken_for_somebody_by_half_a_match(String from) {
        assertThat(new Sender(from).among(Fixtures.theSetup())).isEmpty();
    }
}
