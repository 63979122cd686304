package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Receipt;
import yardlight.channels.Receipt.Fate;

/** What a modem has for us: reports of the texts that we wrote. */
class ModemReportsIT extends WithModem {

    @Test
    void brings_the_report_of_a_text_that_it_sent() {
        listening();
        modem.reference = 0xFF;
        String text = send("MESA 9").reference().orElseThrow();

        modem.reports(0xFF, ANA, 0);

        untilTheCardIsEmpty();
        assertThat(inbox.receipts)
                .containsExactly(new Receipt("modem", text, Fate.DELIVERED, "0x00 received by the phone", NOW));
        assertThat(inbox.offered).isEmpty();
    }

    @Test
    void brings_a_report_that_the_modem_tells_and_does_not_keep() {
        modem.unknown.add("AT+CNMI=2,1,0,2");
        listening();
        String text = send("MESA 9").reference().orElseThrow();

        modem.reports(1, "5755550101", 0x46);

        await().atMost(20, TimeUnit.SECONDS).until(() -> !inbox.receipts.isEmpty());
        assertThat(inbox.receipts)
                .containsExactly(new Receipt("modem", text, Fate.REFUSED, "0x46 validity period expired", NOW));
    }

    @Test
    void waits_for_the_second_line_of_a_report_while_it_talks_of_other_things() {
        modem.unknown.add("AT+CNMI=2,1,0,2");
        polls();
        listening();
        String text = send("MESA 9").reference().orElseThrow();
        String report = Pdus.reported(1, ANA, 0, StandInModem.NOW);

        modem.say("+CDS: " + Pdus.length(report));
        int asked = modem.commands.size();
        await().atMost(20, TimeUnit.SECONDS).until(() -> modem.commands.size() > asked + 30);
        modem.say(report);

        await().atMost(20, TimeUnit.SECONDS).until(() -> !inbox.receipts.isEmpty());
        assertThat(inbox.receipts).extracting(Receipt::reference).containsExactly(text);
    }

    @Test
    void leaves_a_report_with_the_modem_too() {
        polls();
        listening();
        String text = send("MESA 9").reference().orElseThrow();
        inbox.taking = false;
        modem.reports(1, ANA, 0);
        modem.brings(ANA, "OK 47");
        await().atMost(20, TimeUnit.SECONDS).until(() -> inbox.offered.size() > 1);
        assertThat(modem.card.size()).isEqualTo(2);

        inbox.taking = true;

        untilTheCardIsEmpty();
        assertThat(inbox.receipts).extracting(Receipt::reference).containsExactly(text);
    }

    @Test
    void brings_no_report_of_what_it_did_not_send() {
        listening();
        assertThat(send("MESA 9").outcome()).isEqualTo(Outcome.ACCEPTED);

        modem.reports(2, ANA, 0);
        modem.reports(1, "+15755550102", 0);

        untilTheCardIsEmpty();
        assertThat(inbox.receipts).isEmpty();
    }
}
