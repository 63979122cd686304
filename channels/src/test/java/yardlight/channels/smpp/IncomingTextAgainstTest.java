package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import org.jsmpp.PDUStringException;
import org.jsmpp.bean.DeliverSm;
import org.jsmpp.bean.OptionalParameter;
import org.jsmpp.util.DefaultComposer;
import org.jsmpp.util.DefaultDecomposer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.gsm.Concatenation;

/** Written by jSMPP. Codings: SMPP v3.4 section 5.2.19, read (2nd). */
class IncomingTextAgainstTest {

    private static final byte[] NOTHING = {};

    private static IncomingText read(int esmClass, int coding, byte[] octets, OptionalParameter... parameters) {
        try {
            byte[] unit = new DefaultComposer()
                    .deliverSm(
                            1,
                            "",
                            (byte) 1,
                            (byte) 1,
                            "15755550101",
                            (byte) 1,
                            (byte) 1,
                            "15755550100",
                            (byte) esmClass,
                            (byte) 0,
                            (byte) 0,
                            (byte) 0,
                            (byte) coding,
                            octets,
                            parameters);
            DeliverSm read = new DefaultDecomposer().deliverSm(unit);
            return IncomingText.of(read);
        } catch (PDUStringException e) {
            throw new AssertionError(e);
        }
    }

    /** The characters as ch-commons-charset 3.0.2 has them. */
    @ParameterizedTest
    @ValueSource(ints = {0x00, 0xF1, 0x11, 0xC8})
    void is_read_in_the_alphabet_of_SMS(int coding) {
        byte[] octets = CharsetUtil.encode("OK 47 @ señal {2} €", CharsetUtil.CHARSET_GSM);

        assertThat(read(0, coding, octets).text()).isEqualTo("OK 47 @ señal {2} €");
        assertThat(read(0, coding, octets).part()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0x08, 0x18, 0xE0})
    void is_read_in_UCS_2(int coding) {
        byte[] octets = "OK 47 °C \uD83D\uDC4D".getBytes(StandardCharsets.UTF_16BE);

        assertThat(read(0, coding, octets).text()).isEqualTo("OK 47 °C \uD83D\uDC4D");
    }

    @ParameterizedTest
    @ValueSource(ints = {0x01, 0x03})
    void is_read_in_Latin_1(int coding) {
        assertThat(read(0, coding, "OK @ 47".getBytes(StandardCharsets.ISO_8859_1))
                        .text())
                .isEqualTo("OK @ 47");
    }

    /** Common practice: a centre whose default alphabet is Latin-1 after all. */
    @Test
    void is_read_in_Latin_1_when_it_cannot_be_the_alphabet_of_SMS() {
        assertThat(read(0, 0, "señal débil".getBytes(StandardCharsets.ISO_8859_1))
                        .text())
                .isEqualTo("señal débil");
    }

    /** Section 5.3.2.32, read (2nd): the text may come as message_payload instead. */
    @Test
    void is_found_in_the_payload_too() {
        var payload = new OptionalParameter.Message_payload("OK 47".repeat(100).getBytes(StandardCharsets.US_ASCII));

        assertThat(read(0, 0, NOTHING, payload).text()).isEqualTo("OK 47".repeat(100));
    }

    /** 3GPP TS 23.040 clause 9.2.3.24.1, read (2nd). */
    @Test
    void knows_its_place_by_a_header() {
        byte[] octets = HexFormat.of().parseHex("050003CC02024F4B");

        assertThat(read(0x40, 0, octets)).isEqualTo(text("OK", 0xCC, 2, 2));
        assertThat(read(0, 0, NOTHING, new OptionalParameter.Message_payload(octets))
                        .part())
                .isEmpty();
        assertThat(read(0x40, 0, NOTHING, new OptionalParameter.Message_payload(octets)))
                .isEqualTo(text("OK", 0xCC, 2, 2));
    }

    /** Sections 5.3.2.22 to 5.3.2.24, read (2nd). */
    @Test
    void knows_its_place_by_parameters() {
        assertThat(read(
                        0,
                        0,
                        new byte[] {0x4F, 0x4B},
                        new OptionalParameter.Sar_msg_ref_num((short) 0xBEEF),
                        new OptionalParameter.Sar_total_segments((byte) 3),
                        new OptionalParameter.Sar_segment_seqnum((byte) 2)))
                .isEqualTo(text("OK", 0xBEEF, 3, 2));
    }

    @Test
    void is_a_whole_when_parameters_make_no_sense() {
        assertThat(read(0, 0, new byte[] {0x4F}, new OptionalParameter.Sar_msg_ref_num((short) 1))
                        .part())
                .isEmpty();
        assertThat(read(0x40, 0, NOTHING).text()).isEmpty();
    }

    private static IncomingText text(String words, int reference, int total, int sequence) {
        return new IncomingText(words, Optional.of(new Concatenation(reference, total, sequence)));
    }
}
