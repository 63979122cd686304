package yardlight.channels.gsm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.gsm.TpAddress.Ton;
import yardlight.escalation.wording.Segments.Alphabet;

/** 3GPP TS 23.040 clause 9.2, held against published messages. */
class PduAgainstTest {

    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    /** TS 23.040 layout, the example of many tutorials; recomputed. Validity 4 days. */
    @Test
    void writes_the_submit_that_everybody_shows() {
        var submit = new Submit(0, TpAddress.to("+46708251358"), false, 0xAA, plain("hellohello"));

        assertThat("00" + HEX.formatHex(submit.octets())).isEqualTo("0011000B916407281553F80000AA0AE8329BFD4697D9EC37");
        assertThat(submit.octets()).hasSize(23);
    }

    /** Clauses 9.2.3.5 and 9.2.3.23, read (2nd): bits 5 and 6 of the first octet. TS 23.038 clause 4: 08 is UCS-2. */
    @Test
    void asks_for_a_report_says_that_it_has_a_header_and_in_what_it_is_written() {
        var part = new Segment(Alphabet.UCS2, Optional.of(new Concatenation(0xCC, 2, 1)), "°C");
        var submit = new Submit(0x8E, TpAddress.to("+15755550101"), true, 11, part);

        assertThat(HEX.formatHex(submit.octets())).isEqualTo("718E0B915157550501F100080B0A050003CC020100B00043");
    }

    /**
     * Three parts with a header and fill bits, as ATLib by HeboTech writes them: from its own tests, read. Its last octet, a zero
     * beyond the length, is left out.
     */
    @Test
    void writes_the_parts_of_a_long_text_as_another_library_does() {
        String text = """
                Lorem ipsum dolor sit amet, consectetur adipisicing elit, sed do eiusmod tempor incididu
                nt ut labore et dolore magna aliqua.Ut enim ad minim veniam, quis nostrud exercitation u
                llamco laboris nisi ut aliquip ex ea commodo consequat.Duis aute irure dolor in reprehen
                derit in voluptate velit esse cillum dolore eu fugiat nulla pariatur.Excepteur sint occa
                ecat cupidatat non proident, sunt in culpa qui officia deserunt mollit anim id est labor
                um.
                """.replace("\n", "");
        String[] parts = """
                A00500030C0301986F79B90D4AC3E7F53688FC66BFE5A0799A0E0AB7CB741668FC76CFCB637A995E9783C2E4343C3D4F
                8FD3EE33A8CC4ED359A079990C22BF41E5747DDE7E9341F4721BFE9683D2EE719A9C26D7DD74509D0E6287C56F791954
                A683C86FF65B5E06B5C36777181466A7E3F5B0AB4A0795DDE936284C06B5D3EE741B642FBBD3E1360B14AFA7E7

                A00500030C030240EEF79C2EAF9341657C593E4ED3C3F4F4DB0DAAB3D9E1F6F80D6287C56F797A0E72A7E769509D0E0A
                B3D3F17A1A0E2AE341E53068FC6EB7DFE43768FC76CFCBF17A98EE22D6D37350B84E2F83D2F2BABC0C22BFD96F3928ED
                06C9CB7079195D7693CBF2341D947683EC6F761D4E0FD3CB207B999DA683CAF37919344EB3D9F53688FC66BFE5

                900500030C0303CAA0721D64AE9FD3613AC85D67B3C32078589E0ED3EB7257113F2EC3E9E5BA1C344FBBE9A0F7781C2E
                8FC374D0B80E4F93C3F4301DE47EBB4170F93B4D2EBBE92CD0BCEEA683D26ED0B8CE868741F17A1AF4369BD3E3741844
                2ECFCBF2BA9B0E6ABFD9EC341D1476A7DBA03419549ED341ECB0F82DAFB75D
                """.split("\n\n");

        List<Segment> segments = Segment.of(text, 0x0C, 10);

        assertThat(segments).hasSize(3);
        for (int i = 0; i < parts.length; i++) {
            Segment segment = segments.get(i);
            assertThat(String.format("%02X", segment.userDataLength()) + HEX.formatHex(segment.userData()))
                    .isEqualTo(parts[i].replace("\n", ""));
        }
    }

    /** Clause 9.2.3.12.1, read; recomputed. */
    @ParameterizedTest
    @CsvSource({
        "PT1S, 0",
        "PT5M, 0",
        "PT6M, 1",
        "PT60M, 11",
        "PT12H, 143",
        "PT12H30M, 144",
        "PT24H, 167",
        "PT25H, 168",
        "P4D, 170",
        "P30D, 196",
        "P31D, 197",
        "P441D, 255",
        "P900D, 255"
    })
    void counts_how_long_it_is_good_for(Duration length, int validity) {
        assertThat(Submit.validity(length)).isEqualTo(validity);
    }

    /**
     * The example of many tutorials, read at www.turbocontrol.com and in test code of others; a second one from
     * jdsms.com.cn. Both at +02:00.
     */
    @ParameterizedTest
    @CsvSource({
        "07917238010010F5, 040BC87238880900F10000993092516195800AE8329BFD4697D9EC37, 27838890001, 1999-03-29T13:16:59Z,"
                + " hellohello",
        "07911326040000F0, 040B911346610089F60000208062917314800CC8F71D14969741F977FD07, 31641600986,"
                + " 2002-08-26T17:37:41Z, How are you?"
    })
    void reads_what_others_have_shown(String centre, String message, String from, Instant at, String text) {
        Deliver read = Deliver.of(HEX.parseHex(message));

        assertThat(Deliver.is(HEX.parseHex(message))).isTrue();
        assertThat(read.from().digits()).isEqualTo(from);
        assertThat(read.at()).contains(at);
        assertThat(read.text()).isEqualTo(text);
        assertThat(read.part()).isEmpty();
        assertThat(TpAddress.centre(HEX.parseHex(centre))).get().asString().matches("\\+(27831000015|31624000000)");
    }

    /** A published trace with a name for a sender, in test code of others: read (2nd). */
    @Test
    void reads_a_sender_that_is_a_name() {
        Deliver read = Deliver.of(HEX.parseHex("240DD0E474D81C0EBB010000111011315214000BE474D81C0EBB5DE3771B"));

        assertThat(read.from().ton()).isEqualTo(Ton.ALPHANUMERIC);
        assertThat(read.from().digits()).isEqualTo("diafaan");
        assertThat(read.text()).isEqualTo("diafaan.com");
        assertThat(read.at()).contains(Instant.parse("2011-01-11T13:25:41Z"));
    }

    /** A published trace, in test code of others: read (2nd). Sent and received two seconds apart, at +04:00. */
    @Test
    void reads_a_status_report() {
        byte[] message = HEX.parseHex("068E0B919746760143F0410112512394614101125123156100");

        assertThat(StatusReport.is(message)).isTrue();
        assertThat(Deliver.is(message)).isFalse();
        assertThat(StatusReport.of(message))
                .isEqualTo(new StatusReport(
                        142,
                        new TpAddress(0x91, "79646710340"),
                        Optional.of(Instant.parse("2014-10-21T11:32:51Z")),
                        0));
    }

    /** Clause 9.2.3.11: quarters of an hour, the sign is bit 3 of the first half. Derived. */
    @ParameterizedTest
    @CsvSource({
        "62115290310000, 2026-11-25T09:13:00Z",
        "62115290310080, 2026-11-25T07:13:00Z",
        "6211529031004A, 2026-11-25T15:13:00Z",
        "00000000000000, ''",
        "FFFFFFFFFFFFFF, ''",
        "62312590310000, ''"
    })
    void reads_times_in_any_zone_and_none_that_make_no_sense(String time, String instant) {
        Deliver read = Deliver.of(HEX.parseHex("040B915157550501F10000" + time + "00"));

        assertThat(read.at().map(Instant::toString).orElse("")).isEqualTo(instant);
    }

    /** TS 23.038 clause 4: which alphabet a data coding scheme means. Memory. */
    @ParameterizedTest
    @CsvSource({
        "00, O", "10, O", "F0, O", "C8, O", "D0, O", "F1, O", "08, 伀", "18, 伀", "1A, 伀", "E0, 伀", "48, 伀", "04, O",
        "F4, O", "F5, O", "15, O"
    })
    void reads_every_coding(String coding, String first) {
        boolean wide = first.equals("伀");
        String data = wide ? "024F00" : "014F";

        assertThat(Deliver.of(HEX.parseHex("040B915157550501F100" + coding + "62115290310000" + data))
                        .text())
                .isEqualTo(first);
    }

    @Test
    void reads_octets_and_the_header_before_them() {
        Deliver read = Deliver.of(HEX.parseHex("440B915157550501F10004621152903100000A050003CC02024F4BE9FF"));

        assertThat(read.part()).contains(new Concatenation(0xCC, 2, 2));
        assertThat(read.text()).isEqualTo("OKéÿ");
    }

    /** Clause 9.1.2.3: national and unknown numbers, and digits that are none. */
    @Test
    void reads_numbers_of_other_types() {
        assertThat(from("0AA17555551010").ton()).isEqualTo(Ton.NATIONAL);
        assertThat(from("0AA17555551010").digits()).isEqualTo("5755550101");
        assertThat(from("05817555F7").digits()).isEqualTo("57557");
        assertThat(from("048121BA").digits()).isEqualTo("12*#");
    }

    private static TpAddress from(String address) {
        return Deliver.of(HEX.parseHex("04" + address + "00006211529031000000")).from();
    }

    @ParameterizedTest
    @ValueSource(strings = {"04", "040B91", "040B915157550501F10000", "040B915157550501F1000062115290310000", ""})
    void does_not_read_half_of_one(String message) {
        assertThatIllegalArgumentException().isThrownBy(() -> Deliver.of(HEX.parseHex(message)));
        assertThatIllegalArgumentException().isThrownBy(() -> StatusReport.of(HEX.parseHex(message)));
    }

    /** Whatever comes: read, or refused in one way. */
    @Test
    void survives_every_cut_and_every_octet_changed() {
        byte[] whole = HEX.parseHex("440B915157550501F1000062115290310000" + "17050003CC0201D06536FB8D2EB3D96F" + "00");
        for (int cut = 0; cut <= whole.length; cut++) {
            readOrRefused(Arrays.copyOf(whole, cut));
        }
        for (int at = 0; at < whole.length; at++) {
            for (int value = 0; value < 256; value++) {
                byte[] changed = whole.clone();
                changed[at] = (byte) value;
                readOrRefused(changed);
            }
        }
    }

    private static void readOrRefused(byte[] message) {
        try {
            assertThat(Deliver.of(message).text()).isNotNull();
            assertThat(StatusReport.of(message).recipient()).isNotNull();
        } catch (IllegalArgumentException e) {
            assertThat(e).hasMessageContaining("must");
        }
    }

    @Test
    void writes_numbers_only() {
        assertThatIllegalArgumentException().isThrownBy(() -> new TpAddress(0x91, "MESA").octets());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Submit(256, TpAddress.to("+15755550101"), true, 0, plain("one")));
        assertThat(HEX.formatHex(TpAddress.to("+15755550190").asCentre())).isEqualTo("07915157550591F0");
        assertThat(TpAddress.centre(HEX.parseHex("00"))).isEmpty();
    }

    private static Segment plain(String text) {
        return new Segment(Alphabet.GSM7, Optional.empty(), text);
    }
}
