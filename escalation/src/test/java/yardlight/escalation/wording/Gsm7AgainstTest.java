package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.cloudhopper.commons.charset.CharsetUtil;
import com.cloudhopper.commons.charset.GSMCharset;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class Gsm7AgainstTest {

    /** 3GPP TS 23.038 clause 6.2.1, Unicode code points, row = high nibble. Recomputed: all 127 entries equal. */
    private static final String TABLE = """
            0040 00A3 0024 00A5 00E8 00E9 00F9 00EC 00F2 00C7 000A 00D8 00F8 000D 00C5 00E5
            0394 005F 03A6 0393 039B 03A9 03A0 03A8 03A3 0398 039E 001B 00C6 00E6 00DF 00C9
            0020 0021 0022 0023 00A4 0025 0026 0027 0028 0029 002A 002B 002C 002D 002E 002F
            0030 0031 0032 0033 0034 0035 0036 0037 0038 0039 003A 003B 003C 003D 003E 003F
            00A1 0041 0042 0043 0044 0045 0046 0047 0048 0049 004A 004B 004C 004D 004E 004F
            0050 0051 0052 0053 0054 0055 0056 0057 0058 0059 005A 00C4 00D6 00D1 00DC 00A7
            00BF 0061 0062 0063 0064 0065 0066 0067 0068 0069 006A 006B 006C 006D 006E 006F
            0070 0071 0072 0073 0074 0075 0076 0077 0078 0079 007A 00E4 00F6 00F1 00FC 00E0
            """;

    /** 3GPP TS 23.038 clause 6.2.1.1, the septet after the escape. Recomputed: all 10 entries equal. */
    private static final Map<Integer, Integer> EXTENSION = Map.of(
            0x0A, 0x000C, 0x14, 0x005E, 0x28, 0x007B, 0x29, 0x007D, 0x2F, 0x005C, 0x3C, 0x005B, 0x3D, 0x007E, 0x3E,
            0x005D, 0x40, 0x007C, 0x65, 0x20AC);

    private static final int[] ALPHABET = Arrays.stream(TABLE.trim().split("\\s+"))
            .mapToInt(hex -> Integer.parseInt(hex, 16))
            .toArray();

    @Test
    void has_every_entry_of_the_alphabet_in_its_place_both_ways() {
        assertThat(ALPHABET).hasSize(128);
        for (int code = 0; code < 128; code++) {
            if (code != 0x1B) {
                String character = Character.toString(ALPHABET[code]);

                assertThat(Gsm7.encode(character)).as("code of %s", character).containsExactly(code);
                assertThat(Gsm7.decode(new byte[] {(byte) code})).isEqualTo(character);
                assertThat(Gsm7.septets(ALPHABET[code])).isEqualTo(1);
            }
        }
    }

    @Test
    void has_every_entry_of_the_extension_table_at_two_septets_both_ways() {
        EXTENSION.forEach((code, character) -> {
            String text = Character.toString(character);

            assertThat(Gsm7.encode(text)).as("code of %s", text).containsExactly(0x1B, code);
            assertThat(Gsm7.decode(new byte[] {0x1B, code.byteValue()})).isEqualTo(text);
            assertThat(Gsm7.septets(character)).isEqualTo(2);
        });
    }

    @Test
    void has_nothing_else_in_all_of_unicode() {
        long encodable = IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                .filter(Gsm7::encodable)
                .count();

        assertThat(encodable).isEqualTo(127 + 10);
        assertThat(Gsm7.encodable(0x1B)).isFalse();
    }

    /** The digest of the 127 characters in code order, UTF-8: our own digest of TS 23.038 v16, recomputed. */
    @Test
    void decodes_to_the_known_digest() throws Exception {
        byte[] codes = new byte[127];
        for (int i = 0; i < codes.length; i++) {
            codes[i] = (byte) (i < 0x1B ? i : i + 1);
        }

        byte[] digest =
                MessageDigest.getInstance("SHA-256").digest(Gsm7.decode(codes).getBytes(StandardCharsets.UTF_8));

        assertThat(HexFormat.of().formatHex(digest))
                .isEqualTo("322e2665900f7d268fa86ac0b5fb00a26a713720cb34452fc847700d66d5ae49");
    }

    /** The header of the ICU mapping gsm-03.38-2009 says so, read: one older table maps the small letter there. */
    @Test
    void has_the_capital_c_with_cedilla_at_9() {
        assertThat(Gsm7.decode(new byte[] {9})).isEqualTo("\u00C7");
        assertThat(Gsm7.encodable("\u00E7")).isFalse();
    }

    /** 3GPP TS 23.038 clause 6.2.1.1, recomputed. */
    @Test
    void counts_two_septets_for_brackets_and_braces() {
        assertThat(Gsm7.septets("[ALARM]")).isEqualTo(9);
        assertThat(Gsm7.septets("{}")).isEqualTo(4);
    }

    /** Follows from the table of clause 6.2.1, recomputed. */
    @Test
    void does_not_have_what_looks_as_if_it_had() {
        for (String missing : "° – — ‘ ’ “ ” … µ ² ³ ` \t í ó ú á ç".split(" ")) {
            assertThat(Gsm7.encodable(missing)).as(missing).isFalse();
            assertThatIllegalArgumentException().isThrownBy(() -> Gsm7.septets(missing));
            assertThatIllegalArgumentException().isThrownBy(() -> Gsm7.encode(missing));
        }
    }

    /** The ICU mapping header quoting the standard, read (2nd). The lone escape at the end is our own reading. */
    @Test
    void shows_a_space_for_an_escape_that_leads_nowhere() {
        assertThat(Gsm7.decode(new byte[] {0x41, 0x1B, 0x41, 0x42})).isEqualTo("A B");
        assertThat(Gsm7.decode(new byte[] {0x41, 0x1B, 0x1B, 0x42})).isEqualTo("A B");
        assertThat(Gsm7.decode(new byte[] {0x41, 0x1B})).isEqualTo("A ");
    }

    @Test
    void refuses_what_is_no_septet() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Gsm7.decode(new byte[] {(byte) 0x80}))
                .withMessage("septet must be below 128: 128");
    }

    /** A second table by other hands: ch-commons-charset 3.0.2. */
    @Test
    void agrees_with_another_library_on_every_entry() {
        for (int character : ALPHABET) {
            if (character != 0x1B) {
                agrees(Character.toString(character));
            }
        }
        for (int character : EXTENSION.values()) {
            agrees(Character.toString(character));
        }
        agrees(Arrays.stream(ALPHABET)
                .filter(character -> character != 0x1B)
                .mapToObj(Character::toString)
                .collect(Collectors.joining()));
    }

    /** ch-commons-charset 3.0.2 again: it differs after an escape that leads nowhere, where it gives U+0000 or nothing. */
    @Test
    void agrees_with_that_library_on_what_is_missing_but_not_on_an_escape_that_leads_nowhere() {
        for (int character = 0; character <= 0xFFFF; character++) {
            assertThat(Gsm7.encodable(character))
                    .as("U+%04X", character)
                    .isEqualTo(GSMCharset.canRepresent(Character.toString(character)));
        }
        assertThat(CharsetUtil.decode(new byte[] {0x1B, 0x41}, CharsetUtil.CHARSET_GSM))
                .isEqualTo("\u0000");
        assertThat(CharsetUtil.decode(new byte[] {0x1B}, CharsetUtil.CHARSET_GSM))
                .isEmpty();
    }

    private static void agrees(String text) {
        byte[] theirs = CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM);

        assertThat(Gsm7.encode(text)).as(text).isEqualTo(theirs);
        assertThat(Gsm7.decode(theirs)).isEqualTo(CharsetUtil.decode(theirs, CharsetUtil.CHARSET_GSM));
    }
}
