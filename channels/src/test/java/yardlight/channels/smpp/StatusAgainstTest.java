package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.jsmpp.SMPPConstant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;

/** Numbers and names: SMPP v3.4 section 5.1.3, table 5-2, memory, equal to jSMPP's. What we do about each is our own reading. */
class StatusAgainstTest {

    private static Attempt of(int status) {
        return Status.of(new Answer(status, Optional.empty(), ""));
    }

    @ParameterizedTest
    @CsvSource({"0x01", "0x0B", "0x50", "0x51", "0x65", "0x66"})
    void refuses_what_is_about_the_destination_or_the_text(String status) {
        assertThat(of(Integer.decode(status)).outcome()).isEqualTo(Outcome.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({"0x14", "0x45", "0x58", "0x64", "0xFE", "0xFF", "0x400", "0x4FF", "0x7F", "-1"})
    void waits_with_what_may_pass(String status) {
        Attempt attempt = of(Integer.decode(status));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "0x02", "0x03", "0x04", "0x05", "0x08", "0x0A", "0x0D", "0x0E", "0x0F", "0x15", "0x43", "0x48", "0x49", "0x53",
        "0xC0", "0xC1", "0xC2", "0xC3", "0xC4"
    })
    void waits_with_everything_when_it_is_about_us_or_the_centre(String status) {
        Attempt attempt = of(Integer.decode(status));

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
    }

    /** The names in table 5-2 and their numbers, by other hands. */
    @Test
    void has_the_numbers_of_another_library() {
        assertThat(SMPPConstant.STAT_ESME_RINVDSTADR).isEqualTo(0x0B);
        assertThat(SMPPConstant.STAT_ESME_RTHROTTLED).isEqualTo(0x58);
        assertThat(SMPPConstant.STAT_ESME_RMSGQFUL).isEqualTo(0x14);
        assertThat(SMPPConstant.STAT_ESME_RSYSERR).isEqualTo(0x08);
        assertThat(SMPPConstant.STAT_ESME_RX_T_APPN).isEqualTo(0x64);
    }

    @Test
    void leaves_a_centre_alone_that_says_it_is_too_much() {
        assertThat(of(0x58).retryAfter()).contains(Status.THROTTLED);
        assertThat(of(0x14).retryAfter()).contains(Status.QUEUE_FULL);
        assertThat(of(0x64).retryAfter()).isEmpty();
        assertThat(Status.THROTTLED).isBetween(Duration.ofSeconds(1), Duration.ofMinutes(1));
    }

    @Test
    void says_the_number_and_the_centre_s_words_if_it_has_any() {
        assertThat(of(0x58).detail()).isEqualTo("0x00000058 throttled: more than the account may send");
        assertThat(of(0x4A1).detail()).isEqualTo("0x000004A1 a status of the provider's own");
        assertThat(Status.of(new Answer(0x0B, Optional.empty(), "not one of ours"))
                        .detail())
                .isEqualTo("0x0000000B not one of ours");
    }

    @Test
    void takes_a_text_as_accepted_with_or_without_a_name() {
        assertThat(Status.of(new Answer(0, Optional.of("a1"), "")))
                .isEqualTo(Attempt.accepted("taken by the message centre, as a1", "a1"));
        assertThat(Status.of(new Answer(0, Optional.empty(), "")))
                .isEqualTo(Attempt.accepted("taken by the message centre"));
    }
}
