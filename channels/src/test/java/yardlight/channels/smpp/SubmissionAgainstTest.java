package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jsmpp.PDUStringException;
import org.jsmpp.bean.OptionalParameter.User_message_reference;
import org.jsmpp.bean.SubmitSm;
import org.jsmpp.util.DefaultDecomposer;
import org.junit.jupiter.api.Test;
import yardlight.channels.Message;

/** What we write, as jSMPP's own reader reads it. Fields and values: SMPP v3.4 sections 4.4.1 and 5.2, read (2nd). */
class SubmissionAgainstTest {

    private static List<SubmitSm> read(String id, String text) {
        var message = new Message(id, "+15755550101", text, Instant.EPOCH);
        return Submission.of(message, Optional.of("+15755550100")).stream()
                .map(part -> read(part.unit(7)))
                .toList();
    }

    private static SubmitSm read(byte[] unit) {
        try {
            return new DefaultDecomposer().submitSm(unit);
        } catch (PDUStringException e) {
            throw new AssertionError(e);
        }
    }

    private static byte[] characters(SubmitSm part) {
        return Arrays.copyOfRange(part.getShortMessage(), 6, part.getShortMessage().length);
    }

    private static int reference(SubmitSm part) {
        return part.getOptionalParameter(User_message_reference.class).getValue() & 0xFFFF;
    }

    @Test
    void has_addresses_in_international_form_and_asks_for_a_receipt() {
        SubmitSm unit = read("callout-7.2", "MESA 9").get(0);

        assertThat(unit.getSequenceNumber()).isEqualTo(7);
        assertThat(unit.getSourceAddrTon()).isEqualTo((byte) 1);
        assertThat(unit.getSourceAddrNpi()).isEqualTo((byte) 1);
        assertThat(unit.getSourceAddr()).isEqualTo("15755550100");
        assertThat(unit.getDestAddrTon()).isEqualTo((byte) 1);
        assertThat(unit.getDestAddrNpi()).isEqualTo((byte) 1);
        assertThat(unit.getDestAddress()).isEqualTo("15755550101");
        assertThat(unit.getRegisteredDelivery()).isEqualTo((byte) 1);
        assertThat(unit.getEsmClass()).isZero();
        assertThat(unit.getReplaceIfPresent()).isZero();
        assertThat(unit.getOptionalParameters()).hasSize(1);
    }

    /** One septet an octet, not packed: SMPP v3.4, read (2nd). The characters as ch-commons-charset 3.0.2 has them. */
    @Test
    void writes_the_alphabet_of_SMS_as_another_library_does() {
        String text = "MESA 9 DEPÓSITO @ {4} €: señal".replace("Ó", "O");
        SubmitSm unit = read("callout-7.2", text).get(0);

        assertThat(unit.getDataCoding()).isZero();
        assertThat(unit.getShortMessage()).isEqualTo(CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM));
    }

    @Test
    void writes_everything_else_in_UCS_2() {
        SubmitSm unit = read("callout-7.2", "Depósito 3 °C \uD83D\uDCA7").get(0);

        assertThat(unit.getDataCoding()).isEqualTo((byte) 8);
        assertThat(new String(unit.getShortMessage(), StandardCharsets.UTF_16BE))
                .isEqualTo("Depósito 3 °C \uD83D\uDCA7");
    }

    /** 3GPP TS 23.040 clause 9.2.3.24.1, read (2nd): 05 00 03, reference, total, sequence; UDHI of section 5.2.12. */
    @Test
    void divides_a_long_text_and_asks_for_the_receipt_of_its_last_part() {
        List<SubmitSm> parts = read("callout-7.2", "A".repeat(307));

        assertThat(parts).hasSize(3).allSatisfy(part -> {
            assertThat(part.getEsmClass()).isEqualTo((byte) 0x40);
            assertThat(part.getShortMessage()).startsWith(5, 0, 3).hasSizeLessThanOrEqualTo(6 + 153);
            assertThat(part.getShortMessage()[3]).isEqualTo(parts.get(0).getShortMessage()[3]);
            assertThat(part.getShortMessage()[4]).isEqualTo((byte) 3);
        });
        assertThat(parts).extracting(part -> part.getShortMessage()[5]).containsExactly((byte) 1, (byte) 2, (byte) 3);
        assertThat(parts).extracting(SubmitSm::getRegisteredDelivery).containsExactly((byte) 2, (byte) 2, (byte) 1);
        assertThat(parts).extracting(part -> characters(part).length).containsExactly(153, 153, 1);
    }

    @Test
    void says_by_its_references_that_it_is_the_same_message_again() {
        List<SubmitSm> first = read("callout-7.2", "A".repeat(400));
        List<SubmitSm> again = read("callout-7.2", "A".repeat(400));
        List<SubmitSm> other = read("callout-7.3", "A".repeat(400));

        assertThat(first).extracting(SubmissionAgainstTest::reference).containsOnly(reference(again.get(0)));
        assertThat(first.get(1).getShortMessage()).isEqualTo(again.get(1).getShortMessage());
        assertThat(reference(other.get(0))).isNotEqualTo(reference(first.get(0)));
        assertThat(other.get(1).getShortMessage()[3]).isNotEqualTo(first.get(1).getShortMessage()[3]);
    }

    @Test
    void cuts_a_text_without_an_end() {
        List<SubmitSm> parts = read("callout-7.2", "long".repeat(25_000));

        assertThat(parts).hasSize(Submission.MOST_PARTS);
        assertThat(new String(characters(parts.get(9)), StandardCharsets.US_ASCII))
                .endsWith("...");
    }

    @Test
    void leaves_out_control_characters_and_keeps_lines() {
        assertThat(new String(read("callout-7.2", "one\r\ntwo\u0007\u001b[2J\rthree\n")
                        .get(0)
                        .getShortMessage()))
                .isEqualTo("one\ntwo\u001b<2J\nthree");
    }
}
