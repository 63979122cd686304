package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.modem.ModemSettings.Sim;
import yardlight.channels.modem.ModemSettings.Timeouts;
import yardlight.channels.modem.Pdus.Submitted;
import yardlight.channels.modem.StandInModem.Does;

/** Modems that are pulled out, fall silent, start anew, have no network, or whose card is locked. */
class ModemTroubleIT extends WithModem {

    @Test
    void says_how_it_hears_its_network() {
        assertThat(send("one").outcome()).isEqualTo(Outcome.ACCEPTED);

        assertThat(channel.health())
                .isEqualTo(new Health(
                        Health.State.READY,
                        "texts go out through the modem at " + modem.port()
                                + ": the modem hears its network at -97 dBm"));
    }

    @Test
    void pulled_out_everything_waits_and_put_in_again_it_goes_on_by_itself() {
        send("one");
        modem.pullOut();

        isGeneral(send("two"), Outcome.DEFERRED, modem.port());
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);

        modem.plugIn();
        await().atMost(30, TimeUnit.SECONDS)
                .until(() -> channel.health().sentence().contains("dBm"));
        assertThat(channel.health().state()).isEqualTo(Health.State.READY);
        assertThat(send("three").outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(modem.texts()).containsExactly("one", "three");
    }

    @Test
    void without_a_port_everybody_is_told_at_once() {
        channel(Modems.at("/dev/yardlight-has-no-such-port"));

        isGeneral(send("one"), Outcome.DEFERRED, "no port /dev/yardlight-has-no-such-port");
        isGeneral(send("two"), Outcome.DEFERRED, "no port");
        assertThat(channel.knock().orElseThrow()).contains("no port");
    }

    @Test
    void a_modem_that_does_not_answer_is_given_up_in_time() {
        modem.deaf = true;
        waits(Modems.SHORT);

        isGeneral(send("one"), Outcome.DEFERRED, "does not answer");
    }

    @Test
    void a_modem_that_falls_deaf_is_asked_again_until_it_hears() {
        waits(Modems.SHORT);
        send("one");
        modem.deaf = true;

        isGeneral(send("two"), Outcome.DEFERRED, "does not answer");

        modem.deaf = false;
        untilReady();
        assertThat(send("three").outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void silent_before_the_text_nothing_was_sent() {
        modem.announced = Does.FALL_SILENT;
        waits(Modems.SHORT);

        isGeneral(send("one"), Outcome.DEFERRED, "does not ask for the text");
        assertThat(modem.taken).isEmpty();
    }

    @Test
    void silent_after_the_text_nobody_knows() {
        modem.text = Does.FALL_SILENT;
        waits(Modems.SHORT);

        isGeneral(send("one"), Outcome.UNKNOWN, "says nothing of it");

        modem.text = Does.ANSWER;
        untilReady();
        assertThat(send("two").outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(modem.texts()).containsExactly("one", "two");
    }

    @Test
    void pulled_out_after_the_text_nobody_knows() {
        modem.text = Does.VANISH;

        isGeneral(send("one"), Outcome.UNKNOWN, "is gone");
    }

    @Test
    void a_network_that_does_not_answer_leaves_it_open_too() {
        modem.refusal = "+CMS ERROR: 332";

        isGeneral(send("one"), Outcome.UNKNOWN, "network timeout");
    }

    @Test
    void started_anew_by_itself_a_modem_is_told_everything_again() {
        send("one");
        modem.restart();

        assertThat(send("two").outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(modem.texts()).containsExactly("one", "two");
    }

    @Test
    void what_a_modem_says_in_between_is_no_answer() {
        modem.noise.addAll(List.of("RING", "^RSSI: 20", "+CREG: 2", "+CMTI: \"SM\",3", "NO CARRIER", "+CMGL"));
        modem.echo();

        Attempt attempt = send("one");

        assertThat(attempt.outcome()).as(attempt.detail()).isEqualTo(Outcome.ACCEPTED);
        assertThat(attempt.reference().orElseThrow()).startsWith(ANA + "/1/");
        assertThat(channel.health().sentence()).contains("-97 dBm");
    }

    @Test
    void a_modem_whose_answers_are_out_of_step_is_begun_with_anew() {
        modem.noise.add("OK");

        assertThat(channel.knock().orElseThrow()).contains("something else than it was asked");

        modem.noise.clear();
        untilReady();
        assertThat(send("one").outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void without_a_network_everything_waits_and_the_signal_is_said() {
        modem.registration = 2;
        modem.level = 0;

        isGeneral(send("one"), Outcome.DEFERRED, "no network: it is looking for one; it hears -113 dBm or less");
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(channel.health().sentence()).contains("-113 dBm or less");
        assertThat(modem.taken).isEmpty();

        modem.registration = 5;
        modem.level = 31;
        assertThat(send("two").outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(channel.health().sentence()).contains("-51 dBm or more");
    }

    @Test
    void with_the_network_for_data_alone_it_sends() {
        modem.registration = 0;
        modem.lteRegistration = 1;

        assertThat(send("one").outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void its_network_is_looked_after_without_a_text() {
        waits(new Timeouts(
                Modems.PATIENT.answer(), Modems.PATIENT.network(), Modems.PATIENT.whole(), Duration.ofMillis(50)));
        send("one");
        modem.registration = 3;

        await().atMost(20, TimeUnit.SECONDS)
                .untilAsserted(() -> assertThat(channel.health().sentence()).contains("it was turned away"));
        modem.registration = 1;
        await().atMost(20, TimeUnit.SECONDS).until(() -> channel.health().state() == Health.State.READY);
    }

    @Test
    void a_text_that_waits_for_too_long_for_another_is_not_begun() throws Exception {
        waits(new Timeouts(
                Duration.ofSeconds(5), Duration.ofSeconds(5), Duration.ofMillis(500), Duration.ofMinutes(1)));
        channel.listen(inbox);
        await().atMost(20, TimeUnit.SECONDS)
                .until(() -> channel.health().sentence().contains("dBm"));
        modem.text = Does.FALL_SILENT;
        ExecutorService other = Executors.newSingleThreadExecutor();
        try {
            var first = other.submit(() -> send("one"));
            await().atMost(20, TimeUnit.SECONDS).until(() -> !modem.taken.isEmpty());

            Attempt second = send("two");
            assertThat(second.outcome()).isEqualTo(Outcome.DEFERRED);
            assertThat(second.general()).isFalse();
            assertThat(second.detail()).contains("not come to it in time");
            assertThat(first.get().outcome()).isEqualTo(Outcome.UNKNOWN);
        } finally {
            other.shutdownNow();
        }
        assertThat(modem.texts()).containsExactly("one");
    }

    @Test
    void a_text_in_another_alphabet_and_in_parts_arrives_whole() {
        String text = "Depósito 3: 40 °C, señal débil. ".repeat(6).strip();

        assertThat(send(text).outcome()).isEqualTo(Outcome.ACCEPTED);

        assertThat(modem.texts()).containsExactly(text);
        assertThat(modem.taken)
                .hasSize(3)
                .allSatisfy(part -> assertThat(part.report()).isTrue());
    }

    @Test
    void the_service_centre_of_the_settings_is_named_and_that_of_the_card_is_left_to_the_modem() {
        send("one");
        channel(Modems.at(
                modem.port(),
                new Sim(Optional.empty(), Optional.of("+15755550190"), Optional.empty()),
                Modems.PATIENT));
        send("two");

        assertThat(modem.taken).extracting(Submitted::centre).containsExactly("00", "07915157550591F0");
    }
}
