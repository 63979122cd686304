package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShorteningTest {

    @ParameterizedTest
    @CsvSource({
        "10, WATER TANK, WATER TANK",
        "9, WATER TANK, WATER",
        "5, WATER TANK, WATER",
        "4, WATER TANK, WATE",
        "6, WATER TANK, WATER",
        "11, TANK - NORTH, TANK",
        "11, (TANK (NORTH), (TANK",
        "7, TANK & NORTH, TANK",
        "12, SALT-WATER-TANK, SALT-WATER",
        "12, A SALT-WATER-TANK, A",
        "3, ( TANK, (",
        "3, -WATER, -WA",
        "0, WATER, ''",
        "5, [[[[[, [[",
        "6, [[ TANK, [["
    })
    void cuts_after_a_whole_word_where_it_can(int septets, String text, String shortened) {
        assertThat(Shortening.to(septets, text)).isEqualTo(shortened);
    }
}
