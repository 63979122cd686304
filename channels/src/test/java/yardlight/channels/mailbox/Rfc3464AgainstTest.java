package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Receipt.Fate;

/**
 * The four example messages of RFC 3464 appendix E (read in a stored copy; the header of the first, which the RFC prints run
 * together, as separate lines), and what 2.3.3 says of actions (read).
 */
class Rfc3464AgainstTest {

    private static Meaning.Report read(String file) throws MessagingException, IOException {
        return (Meaning.Report) Mails.read(Mails.file("rfc3464/" + file));
    }

    @Test
    void the_first_failed_for_good_although_its_status_is_of_class_4() throws Exception {
        Meaning.Report report = read("1-simple.eml");

        assertThat(report.fate()).isEqualTo(Fate.REFUSED);
        assertThat(report.words()).isEqualTo("failed 4.0.0, smtp; 426 connection timed out");
        assertThat(report.about()).isEmpty();
    }

    @Test
    void the_second_is_two_failures_and_one_that_may_still_get_there() throws Exception {
        StatusReport report = status("2-several.eml");

        assertThat(report.message()).containsEntry("reporting-mta", "dns; cs.utk.edu");
        assertThat(report.recipients())
                .extracting(StatusReport.Recipient::fate)
                .containsExactly(Optional.of(Fate.REFUSED), Optional.of(Fate.DELAYED), Optional.of(Fate.REFUSED));
        assertThat(report.recipients().get(0).words())
                .isEqualTo("failed 5.0.0 (permanent failure), smtp; 550 'arathib@vnet.IBM.COM' is not a"
                        + " registered gateway user");
        assertThat(read("2-several.eml").fate()).isEqualTo(Fate.DELAYED);
    }

    @Test
    void the_third_is_a_gateway_s_with_the_status_before_the_action() throws Exception {
        Meaning.Report report = read("3-gateway.eml");

        assertThat(report.fate()).isEqualTo(Fate.REFUSED);
        assertThat(status("3-gateway.eml").recipients().get(0).fields())
                .containsEntry("final-recipient", "unknown; nair_s");
    }

    @Test
    void the_fourth_is_only_late() throws Exception {
        assertThat(read("4-delayed.eml").fate()).isEqualTo(Fate.DELAYED);
    }

    // RFC 3464 2.3.3, read: in any letter case; relayed: no more will be heard; expanded: not final.
    @ParameterizedTest
    @CsvSource({
        "failed,REFUSED",
        "FAILED,REFUSED",
        "Delayed,DELAYED",
        "delivered,DELIVERED",
        "relayed,",
        "expanded,",
        "gone,"
    })
    void the_action_decides(String action, Fate fate) {
        for (String status : List.of("2.0.0", "4.0.0", "5.0.0")) {
            var report = StatusReport.of(
                    "Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822;ana@example.org\nAction: " + action
                            + "\nStatus: " + status + "\n");

            assertThat(report.whatCounts().flatMap(StatusReport.Recipient::fate))
                    .isEqualTo(Optional.ofNullable(fate));
        }
    }

    private static StatusReport status(String file) throws MessagingException, IOException {
        for (Leaf leaf : Parts.of(Mails.file("rfc3464/" + file))) {
            if (leaf.is("message", "delivery-status")) {
                return StatusReport.of(leaf.text());
            }
        }
        throw new AssertionError(file);
    }
}
