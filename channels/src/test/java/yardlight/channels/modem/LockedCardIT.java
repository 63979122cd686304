package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.modem.ModemSettings.Sim;

/** SIM cards that ask for a PIN; three wrong ones lock them. */
class LockedCardIT extends WithModem {

    @TempDir
    Path home;

    private ModemSettings with(String pin) {
        Optional<Path> tried = Optional.of(home.resolve("modem-pin"));
        return Modems.at(modem.port(), new Sim(Optional.of(pin), Optional.empty(), tried), Modems.PATIENT);
    }

    private List<String> pinsTried() {
        return modem.commands.stream().filter(one -> one.startsWith("AT+CPIN=")).toList();
    }

    @Test
    void a_card_that_asks_for_its_pin_gets_it_each_time() {
        modem.card.pin = Optional.of("1234");
        channel(with("1234"));

        assertThat(send("one").outcome()).isEqualTo(Outcome.ACCEPTED);
        modem.pullOut();
        modem.plugIn();
        untilReady();

        assertThat(pinsTried()).containsExactly("AT+CPIN=\"1234\"", "AT+CPIN=\"1234\"");
        assertThat(home.resolve("modem-pin")).doesNotExist();
    }

    @Test
    void a_wrong_pin_is_tried_once_and_not_by_a_gateway_that_is_started_again_either() {
        modem.card.pin = Optional.of("1234");
        channel(with("4321"));

        isGeneral(send("one"), Outcome.DEFERRED, "did not take its PIN");
        channel.knock();
        channel(with("4321"));
        isGeneral(send("two"), Outcome.DEFERRED, "not tried again");

        assertThat(pinsTried()).hasSize(1);
        assertThat(modem.card.pinTries).isEqualTo(2);
        assertThat(channel.health().sentence()).contains("PIN").doesNotContain("4321");

        channel(with("1234"));
        assertThat(send("three").outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void a_last_try_for_the_pin_is_left_to_the_owner() {
        modem.card.pin = Optional.of("1234");
        modem.card.pinTries = 1;
        channel(with("1234"));

        isGeneral(send("one"), Outcome.DEFERRED, "one try");
        assertThat(pinsTried()).isEmpty();
    }

    @Test
    void a_card_that_asks_for_what_nobody_set_says_so() {
        modem.card.pin = Optional.of("1234");

        isGeneral(send("one"), Outcome.DEFERRED, "asks for its PIN, and none is set");

        modem.card.pinTries = 0;
        assertThat(channel.knock().orElseThrow()).contains("PUK");
    }
}
