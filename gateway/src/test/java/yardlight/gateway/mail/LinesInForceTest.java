package yardlight.gateway.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.channels.mailbox.KnownLines.Known;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;

class LinesInForceTest {

    private final Setup setup = Fixtures.theSetup();
    private final Line first = setup.contacts().get("ana").lines().get(0);

    @Test
    void are_known_by_their_whole_address_in_any_letter_case() {
        var lines = new LinesInForce(() -> setup, List.of(first.channel()));
        String from = first.address().toLowerCase(java.util.Locale.ROOT);

        assertThat(lines.from(from)).contains(new Known(first.channel(), first.address()));
        assertThat(lines.from(from + ".evil.example")).isEmpty();
        assertThat(lines.from(from.replaceFirst("@.*", "") + "@evil.example")).isEmpty();
    }

    @Test
    void are_not_those_of_other_channels() {
        var lines = new LinesInForce(() -> setup, List.of("pigeon"));

        assertThat(lines.from(first.address())).isEmpty();
    }
}
