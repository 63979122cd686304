package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Receipt.Fate;

/** TP-Status, 3GPP TS 23.040 clause 9.2.3.15: 0 to 2 and 32 to 63 read (2nd), the rest memory. */
class DeliveryStatusAgainstTest {

    @ParameterizedTest
    @CsvSource({
        "0, DELIVERED, 0x00 received by the phone",
        "32, DELAYED, 'congestion, the service centre goes on trying'",
        "63, DELAYED, a status of its own",
        "64, REFUSED, remote procedure error",
        "70, REFUSED, 0x46 validity period expired",
        "95, REFUSED, a status of its own",
        "96, REFUSED, 'congestion, given up'",
        "127, REFUSED, a status of its own"
    })
    void goes_by_its_class(int status, Fate fate, String words) {
        assertThat(DeliveryStatus.fate(status)).contains(fate);
        assertThat(DeliveryStatus.words(status)).contains(words);
    }

    /** Forwarded to where nobody can tell, replaced, and what is reserved or an operator's own among the completed ones. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "31"})
    void says_nothing_when_nobody_knows_whether_it_arrived(int status) {
        assertThat(DeliveryStatus.fate(status)).isEmpty();
    }

    /** The clause: what is reserved is to be taken for 99, service rejected. */
    @Test
    void is_refused_when_it_is_reserved() {
        assertThat(DeliveryStatus.fate(0x80)).contains(Fate.REFUSED);
        assertThat(DeliveryStatus.fate(0xFF)).contains(Fate.REFUSED);
    }
}
