package yardlight.channels.gsm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.cloudhopper.commons.charset.GSMBitPacker;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.wording.Gsm7;

class SeptetsAgainstTest {

    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    /** 3GPP TS 23.038 clause 6.1.2.1.1, read; the values recomputed. */
    @ParameterizedTest
    @CsvSource({
        "hellohello, E8329BFD4697D9EC37",
        "Hello, C8329BFD06",
        "hello world, E8329BFD06DDDF723619",
        "€, 9B32",
        "12345678, 31D98C56B3DD70",
        "1234567, 31D98C56B3DD00",
        "[ALARM], 1B5E90199436373E"
    })
    void are_packed_from_the_lowest_bit_on_and_unpacked_again(String text, String packed) {
        byte[] septets = Gsm7.encode(text);

        assertThat(HEX.formatHex(Septets.pack(septets))).isEqualTo(packed);
        assertThat(Septets.unpack(HEX.parseHex(packed), septets.length, 0)).isEqualTo(septets);
    }

    /** Clause 6.1.2.3, read (2nd): seven spare bits look like one more character, and only the count tells. */
    @Test
    void are_told_from_spare_bits_by_their_number() {
        byte[] packed = HEX.parseHex("31D98C56B3DD00");

        assertThat(Gsm7.decode(Septets.unpack(packed, 7, 0))).isEqualTo("1234567");
        assertThat(Gsm7.decode(Septets.unpack(packed, 8, 0))).isEqualTo("1234567@");
    }

    /** Packing by other hands: ch-commons-charset 3.0.2. It leaves out a last @ where it cannot be told. */
    @Test
    void agree_with_another_library_at_every_length() {
        var random = new Random(23_038);
        for (int length = 0; length <= 160; length++) {
            byte[] septets = new byte[length];
            for (int i = 0; i < length; i++) {
                septets[i] = (byte) (1 + random.nextInt(127));
            }

            byte[] theirs = GSMBitPacker.pack(septets);

            assertThat(Septets.pack(septets)).as("%d septets", length).isEqualTo(theirs);
            assertThat(Septets.unpack(theirs, length, 0)).isEqualTo(septets);
        }
    }

    @Test
    void start_after_any_fill_bits_and_are_found_there_again() {
        byte[] septets = Gsm7.encode("MESA 9 WATER TANK HIGH {4}");
        for (int fill = 0; fill <= 6; fill++) {
            byte[] packed = Septets.pack(septets, fill);

            assertThat(packed[0] & (1 << fill) - 1).isZero();
            assertThat(Septets.unpack(packed, septets.length, fill)).isEqualTo(septets);
        }
    }

    @Test
    void are_refused_when_they_are_none_or_not_there() {
        assertThatIllegalArgumentException().isThrownBy(() -> Septets.pack(new byte[] {(byte) 0x80}));
        assertThatIllegalArgumentException().isThrownBy(() -> Septets.pack(new byte[1], 7));
        assertThatIllegalArgumentException().isThrownBy(() -> Septets.unpack(new byte[7], 9, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Septets.unpack(new byte[7], 8, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Septets.unpack(new byte[7], -1, 0));
    }
}
