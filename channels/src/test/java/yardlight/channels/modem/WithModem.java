package yardlight.channels.modem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.FakeInbox;
import yardlight.channels.Message;
import yardlight.channels.modem.ModemSettings.Timeouts;

/** A modem, and a channel to it. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
abstract class WithModem {

    static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");
    static final String ANA = "+15755550101";

    final FakeInbox inbox = new FakeInbox();
    StandInModem modem;
    ModemChannel channel;

    @BeforeEach
    void open() throws IOException {
        modem = new StandInModem();
        waits(Modems.PATIENT);
    }

    /** Without a pseudo-terminal there is nothing to close. */
    @AfterEach
    void close() throws IOException {
        if (modem != null) {
            channel.close();
            modem.close();
        }
    }

    /** In place of the channel that there was. */
    void channel(ModemSettings settings) {
        if (channel != null) {
            channel.close();
        }
        channel = ModemChannel.of(Optional.of(settings), InstantSource.fixed(NOW));
    }

    void waits(Timeouts timeouts) {
        channel(Modems.at(modem.port(), timeouts));
    }

    /** It looks after things by itself, again and again. */
    void polls() {
        waits(new Timeouts(
                Modems.PATIENT.answer(), Modems.PATIENT.network(), Modems.PATIENT.whole(), Duration.ofMillis(50)));
    }

    void listening() {
        channel.listen(inbox);
        assertThat(channel.knock()).isEmpty();
    }

    Attempt send(String text) {
        return channel.send(new Message("callout-7.2", ANA, text, NOW));
    }

    void untilReady() {
        await().atMost(30, TimeUnit.SECONDS).until(() -> channel.knock().isEmpty());
    }

    void untilTheCardIsEmpty() {
        await().atMost(20, TimeUnit.SECONDS).until(() -> modem.card.size() == 0);
    }

    static void isGeneral(Attempt attempt, Outcome outcome, String words) {
        assertThat(attempt.outcome()).as(attempt.detail()).isEqualTo(outcome);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains(words);
    }
}
