package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.wording.Segments.Alphabet;

class SegmentsAgainstTest {

    private static final String EURO = "\u20AC";
    /** Outside the basic plane: two units. */
    private static final String PICTURE = "\uD83D\uDCA1";

    /** Concatenated limits of 3GPP TS 23.040 clause 9.2.3.24.1, read; the counts recomputed. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1, 1", "160, 1", "161, 2", "306, 2", "307, 3", "459, 3", "460, 4"})
    void are_counted_by_septets(int septets, int segments) {
        Segments counted = Segments.of("A".repeat(septets));

        assertThat(counted.alphabet()).isEqualTo(Alphabet.GSM7);
        assertThat(counted.count()).isEqualTo(segments);
    }

    /** The same clause for UCS-2, read; the counts recomputed. */
    @ParameterizedTest
    @CsvSource({"1, 1", "70, 1", "71, 2", "134, 2", "135, 3", "201, 3", "202, 4"})
    void are_counted_by_units_of_16_bits(int units, int segments) {
        Segments counted = Segments.of("\u00B0".repeat(units));

        assertThat(counted.alphabet()).isEqualTo(Alphabet.UCS2);
        assertThat(counted.count()).isEqualTo(segments);
    }

    /** Counting traps of the same rule, recomputed. */
    @Test
    void are_not_counted_by_characters() {
        assertThat(Segments.of("A".repeat(159) + EURO).count()).isEqualTo(2);
        assertThat(Segments.of("A".repeat(158) + EURO).count()).isEqualTo(1);
        assertThat(Segments.of(PICTURE.repeat(35)).count()).isEqualTo(1);
        assertThat(Segments.of(PICTURE.repeat(36)).count()).isEqualTo(2);
    }

    /** "Shall not be split in the middle", clause 9.2.3.24.1, read; the example is derived, recomputed. */
    @Test
    void do_not_split_an_escape_pair() {
        Segments segments = Segments.of("A".repeat(152) + EURO + "B".repeat(152));

        assertThat(segments.sizes()).containsExactly(152, 153, 1);
        assertThat(segments.parts()).containsExactly("A".repeat(152), EURO + "B".repeat(151), "B");
    }

    /** The same rule for a UCS-2 character, derived: 34 pictures are 68 units, one more than a part holds. */
    @Test
    void do_not_split_a_surrogate_pair() {
        Segments segments = Segments.of(PICTURE.repeat(50));

        assertThat(segments.sizes()).containsExactly(66, 34);
        assertThat(segments.parts()).containsExactly(PICTURE.repeat(33), PICTURE.repeat(17));
    }

    @Test
    void keep_the_whole_text() {
        String text = String.join("", Collections.nCopies(40, "tank [9] " + EURO));

        Segments segments = Segments.of(text);

        assertThat(String.join("", segments.parts())).isEqualTo(text);
        assertThat(segments.sizes()).allMatch(size -> size <= 153);
    }

    @Test
    void are_one_and_empty_for_an_empty_text() {
        assertThat(Segments.of("").parts()).isEqualTo(List.of(""));
        assertThat(Segments.of("").sizes()).containsExactly(0);
    }
}
