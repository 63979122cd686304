package yardlight.gateway.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeChannel;
import yardlight.escalation.Fixtures;

class SheetsTest {

    @Test
    void name_the_channels_that_nothing_gets_out_by_unless_nobody_needs_them() {
        var channels = List.of(
                FakeChannel.named("mail"),
                FakeChannel.notConfigured("sms-mail"),
                FakeChannel.named("smpp").troubled(Optional.of("texts wait")),
                FakeChannel.notConfigured("modem"));

        assertThat(Sheets.cannotSend(channels, Fixtures.theSetup()))
                .containsExactly("sms-mail: sms-mail is not set up", "smpp: texts wait");
    }
}
