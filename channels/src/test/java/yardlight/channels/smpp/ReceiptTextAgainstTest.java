package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.jsmpp.bean.OptionalParameter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Receipt.Fate;

class ReceiptTextAgainstTest {

    private static final OptionalParameter[] NONE = {};

    private static ReceiptText read(String text) {
        return ReceiptText.of(text, NONE);
    }

    /** A published trace, read (2nd); the format is that of SMPP v3.4 appendix B. */
    @Test
    void says_what_a_real_one_said() {
        ReceiptText receipt = read("id:0911897980 sub:001 dlvrd:000 submit date:1201121551 done date:1201121551"
                + " stat:UNDELIV err:075 text:-PROFILE");

        assertThat(receipt.id()).isEqualTo("0911897980");
        assertThat(receipt.state()).isEqualTo("UNDELIV");
        assertThat(receipt.fate()).isEqualTo(Fate.REFUSED);
        assertThat(receipt.error()).isEqualTo("075");
        assertThat(receipt.done()).contains(LocalDateTime.of(2012, 1, 12, 15, 51));
        assertThat(receipt.words()).isEqualTo("UNDELIV, error 075, done 2012-01-12T15:51 by the centre's clock");
    }

    /** SMPP v3.4 appendix B and section 5.2.28, read (2nd). What we make of each is our own reading. */
    @ParameterizedTest
    @CsvSource({
        "DELIVRD, 2, DELIVERED",
        "EXPIRED, 3, REFUSED",
        "DELETED, 4, REFUSED",
        "UNDELIV, 5, REFUSED",
        "REJECTD, 8, REFUSED",
        "ENROUTE, 1, DELAYED",
        "ACCEPTD, 6, DELAYED",
        "UNKNOWN, 7, DELAYED",
        "WHATEVR, 99, DELAYED"
    })
    void means_the_same_in_words_and_as_a_number(String word, byte number, Fate fate) {
        var state = new OptionalParameter.Message_state(number);

        assertThat(read("id:1 stat:" + word).fate()).isEqualTo(fate);
        assertThat(ReceiptText.of("id:1", new OptionalParameter[] {state}).fate())
                .isEqualTo(fate);
    }

    /** Appendix B is only an example ("vendor specific"), read (2nd): these are written as providers do, common practice. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            id:1a2b stat:DELIVRD err:000 done date:261125021305, 1a2b, 2026-11-25T02:13:05
            ID: 1a2b STAT: delivrd Done Date: 2611250213, 1a2b, 2026-11-25T02:13
            sub:001 id:1a2b submit date:2611250212 done date:2611250213 stat:DELIVRD text:id:9 stat:UNDELIV, 1a2b, 2026-11-25T02:13
            """)
    void is_read_however_it_is_written(String text, String id, LocalDateTime done) {
        assertThat(read(text).id()).isEqualTo(id);
        assertThat(read(text).fate()).isEqualTo(Fate.DELIVERED);
        assertThat(read(text).done()).contains(done);
    }

    @Test
    void believes_the_parameters_before_the_text() {
        var id = new OptionalParameter.Receipted_message_id("77");
        var state = new OptionalParameter.Message_state((byte) 2);

        ReceiptText receipt = ReceiptText.of("id:1 stat:UNDELIV", new OptionalParameter[] {id, state});

        assertThat(receipt.id()).isEqualTo("77");
        assertThat(receipt.fate()).isEqualTo(Fate.DELIVERED);
    }

    @Test
    void survives_a_text_that_is_none() {
        ReceiptText receipt = read("done date:9913992599 err: hello");

        assertThat(receipt.id()).isEmpty();
        assertThat(receipt.done()).isEmpty();
        assertThat(receipt.fate()).isEqualTo(Fate.DELAYED);
        assertThat(read("").words()).isEqualTo("no state");
    }
}
