package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;

/**
 * 3GPP TS 27.005 clause 3.2.5: 0 to 127 are causes of TS 24.011 annex E-2, 128 to 255 those of TS 23.040 clause 9.2.3.22, from
 * 300 on the modem's own; read (2nd), in manuals of modems and lists of the codes. 330 to 332 and 500: memory. The outcome of
 * each is ours.
 */
class TroubleAgainstTest {

    private static Attempt of(String result) {
        return Trouble.of(new Answer(List.of(), result));
    }

    @ParameterizedTest
    @CsvSource({
        "1, unassigned number",
        "10, call barred",
        "30, unknown subscriber",
        "144, data coding scheme not supported",
        "195, invalid address",
        "196, destination barred"
    })
    void is_held_against_the_line_when_it_is_about_the_number_or_the_text(int number, String words) {
        Attempt attempt = of("+CMS ERROR: " + number);

        assertThat(attempt.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(attempt.detail()).isEqualTo(words + " (+CMS ERROR: " + number + ")");
    }

    @ParameterizedTest
    @CsvSource({
        "8, operator determined barring",
        "28, unidentified subscriber",
        "38, network out of order",
        "41, temporary failure",
        "42, congestion",
        "50, requested facility not subscribed",
        "69, requested facility not implemented",
        "192, service centre busy",
        "193, no service centre subscription",
        "300, failure of the modem",
        "302, operation not allowed",
        "310, SIM card not inserted",
        "311, SIM PIN required",
        "330, service centre address unknown",
        "331, no network service"
    })
    void is_between_us_and_the_network_when_it_is_about_neither(int number, String words) {
        Attempt attempt = of("+CMS ERROR: " + number);

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains(words);
    }

    @ParameterizedTest
    @CsvSource({
        "21, short message transfer rejected",
        "27, destination out of service",
        "96, invalid mandatory information",
        "127, interworking",
        "211, memory capacity exceeded",
        "500, unknown error",
        "512, an error of the maker's own",
        "230, an error of the maker's own",
        "99999, an error of the maker's own"
    })
    void passes_when_nobody_can_say_whom_it_is_about(int number, String words) {
        Attempt attempt = of("+CMS ERROR: " + number);

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isFalse();
        assertThat(attempt.detail()).contains(words);
    }

    /** The modem asked the network and heard nothing: the text may be there. */
    @ParameterizedTest
    @ValueSource(strings = {"+CMS ERROR: 332"})
    void is_doubtful_when_the_network_did_not_answer(String result) {
        assertThat(of(result).outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(of(result).general()).isTrue();
    }

    /** TS 23.040 clause 9.2.3.22: C5, the service centre has it from before. */
    @ParameterizedTest
    @ValueSource(strings = {"+CMS ERROR: 197"})
    void is_there_when_it_is_a_duplicate(String result) {
        assertThat(of(result).outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    /** TS 27.007 clause 9.2, read (2nd). */
    @ParameterizedTest
    @CsvSource({"10, SIM card not inserted", "30, no network service", "999, an error of the modem's own"})
    void is_the_modem_s_when_it_says_so(int number, String words) {
        Attempt attempt = of("+CME ERROR: " + number);

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ERROR", "+CMS ERROR: no such thing", "+CMS ERROR:", "+CMS ERROR: 4294967297"})
    void passes_when_the_modem_does_not_say_why(String result) {
        assertThat(of(result).outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(of(result).general()).isFalse();
        assertThat(of(result).detail()).contains("does not say why").contains(result);
    }
}
