package yardlight.channels.gsm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.wording.Segments.Alphabet;

class SegmentAgainstTest {

    private static final HexFormat HEX = HexFormat.of().withUpperCase();
    private static final Concatenation FIRST_OF_TWO = new Concatenation(0xCC, 2, 1);

    /** 3GPP TS 23.040 clause 9.2.3.24: a header of 6 octets, 1 fill bit, then septets. Derived, recomputed. */
    @Test
    void packs_septets_behind_a_header_and_a_fill_bit() {
        var segment = new Segment(Alphabet.GSM7, Optional.of(FIRST_OF_TWO), "hellohello");

        assertThat(HEX.formatHex(segment.userData())).isEqualTo("050003CC0201D06536FB8D2EB3D96F");
        assertThat(segment.userDataLength()).isEqualTo(17);
        assertThat(Segment.ofUserData(Alphabet.GSM7, true, segment.userData(), 17))
                .isEqualTo(segment);
    }

    /** The same clause: 153 septets fill a message to its last bit. Derived, recomputed. */
    @Test
    void fills_140_octets_with_153_septets_and_a_header() {
        var segment = new Segment(Alphabet.GSM7, Optional.of(FIRST_OF_TWO), "A".repeat(153));

        assertThat(HEX.formatHex(segment.userData())).startsWith("050003CC020182C16030180C06");
        assertThat(segment.userData()).hasSize(140);
        assertThat(segment.userDataLength()).isEqualTo(160);
        assertThat(segment.octets()).hasSize(6 + 153);
    }

    /** TS 23.040 with TS 23.038: "hellohello" as a modem gets it. Recomputed. */
    @Test
    void is_packed_without_a_header_when_it_is_alone() {
        Segment segment = Segment.of("hellohello", 7, 1).get(0);

        assertThat(segment.concatenation()).isEmpty();
        assertThat(segment.userDataLength()).isEqualTo(0x0A);
        assertThat(HEX.formatHex(segment.userData())).isEqualTo("E8329BFD4697D9EC37");
        assertThat(segment.octets()).isEqualTo("hellohello".getBytes(StandardCharsets.US_ASCII));
    }

    /** Clause 9.2.3.24.1, read: 160 and 153 septets, 70 and 67 units of UCS-2; counts recomputed. */
    @ParameterizedTest
    @CsvSource({
        "A, 1, 1",
        "A, 160, 1",
        "A, 161, 2",
        "A, 306, 2",
        "A, 307, 3",
        "A, 459, 3",
        "A, 460, 4",
        "°, 70, 1",
        "°, 71, 2",
        "°, 134, 2",
        "°, 135, 3"
    })
    void is_one_of_as_many_as_it_takes(String character, int times, int segments) {
        List<Segment> all = Segment.of(character.repeat(times), 0xCC, 255);

        assertThat(all).hasSize(segments);
        assertThat(all).allSatisfy(one -> assertThat(one.userData()).hasSizeLessThanOrEqualTo(140));
        assertThat(all.stream().map(Segment::text).collect(Collectors.joining()))
                .isEqualTo(character.repeat(times));
    }

    @Test
    void numbers_its_parts_from_one_under_one_reference() {
        assertThat(Segment.of("A".repeat(400), 200, 255))
                .extracting(one -> one.concatenation().orElseThrow())
                .containsExactly(
                        new Concatenation(200, 3, 1), new Concatenation(200, 3, 2), new Concatenation(200, 3, 3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "@", "1234567", "MESA 9 {4} €", "Depósito 3 °C", "\uD83D\uDCA7 pump", "\u0000"})
    void is_read_as_it_was_written_both_ways(String text) {
        for (Segment segment : Segment.of(text.repeat(3), 9, 255)) {
            boolean header = segment.concatenation().isPresent();

            assertThat(Segment.ofOctets(segment.alphabet(), header, segment.octets()))
                    .isEqualTo(segment);
            assertThat(Segment.ofUserData(segment.alphabet(), header, segment.userData(), segment.userDataLength()))
                    .isEqualTo(segment);
        }
    }

    @Test
    void cuts_what_is_too_long_and_shows_it() {
        List<Segment> plain = Segment.of("long".repeat(25_000), 1, 10);
        List<Segment> wide = Segment.of("\uD83D\uDCA7".repeat(50_000), 1, 3);

        assertThat(plain).hasSize(10);
        assertThat(plain.get(9).text()).endsWith("...").hasSize(153);
        assertThat(wide).hasSize(3);
        assertThat(wide.get(2).text()).endsWith("\uD83D\uDCA7...");
    }

    /** Clauses 9.2.3.24.1, read (2nd), and 9.2.3.24.8, memory. */
    @ParameterizedTest
    @CsvSource({
        "050003CC0201, 204, 2, 1",
        "06080412340302, 4660, 3, 2",
        "0A0504158200000003CC0201, 204, 2, 1",
        "0B05041582000000030C0402, 12, 4, 2",
        "0B00030C0402050415820000, 12, 4, 2"
    })
    void finds_its_place_among_the_elements_of_a_header(String header, int reference, int total, int sequence) {
        assertThat(Concatenation.in(HEX.parseHex(header))).contains(new Concatenation(reference, total, sequence));
    }

    /** Clause 9.2.3.24.1, read (2nd): no parts, part 0 or a part above the total is to be ignored. The rest is our own reading. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "050003CC0001",
                "050003CC0200",
                "050003CC0203",
                "",
                "00",
                "05",
                "050003CC02",
                "050003",
                "05000400000000"
            })
    void has_no_place_where_a_header_makes_no_sense(String header) {
        assertThat(Concatenation.in(HEX.parseHex(header))).isEmpty();
    }

    @Test
    void survives_a_header_that_claims_more_than_there_is() {
        assertThat(Segment.ofOctets(Alphabet.GSM7, true, HEX.parseHex("FF41")).text())
                .isEmpty();
        assertThat(Segment.ofOctets(Alphabet.UCS2, true, new byte[0]).text()).isEmpty();
        assertThat(Segment.ofOctets(Alphabet.UCS2, false, HEX.parseHex("004100"))
                        .text())
                .isEqualTo("A");
        assertThat(Segment.ofUserData(Alphabet.UCS2, true, HEX.parseHex("FF41"), 2)
                        .text())
                .isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> Segment.ofUserData(Alphabet.GSM7, false, new byte[1], 9));
        assertThatIllegalArgumentException().isThrownBy(() -> Segment.ofUserData(Alphabet.UCS2, false, new byte[1], 9));
    }

    @Test
    void is_written_with_a_reference_of_8_bits_only() {
        assertThatIllegalStateException().isThrownBy(() -> new Concatenation(256, 2, 1).header());
        assertThatIllegalArgumentException().isThrownBy(() -> new Concatenation(1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Concatenation(1, 256, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> Segment.of("one", 1, 0));
    }
}
