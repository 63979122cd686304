package yardlight.gateway.mail;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.channels.mailbox.KnownLines;
import yardlight.escalation.setup.Line;
import yardlight.gateway.setup.SetupInForce;

/**
 * The lines of the setup that holds whose answers come into the mailbox. An address must be the same, not only its number: the
 * same number at another server's is anybody's.
 */
record LinesInForce(SetupInForce inForce, List<String> channels) implements KnownLines {

    @Override
    public Optional<Known> from(String from) {
        return inForce.setup().contacts().values().stream()
                .flatMap(contact -> contact.lines().stream())
                .filter(line -> channels.contains(line.channel()) && same(line, from))
                .findFirst()
                .map(line -> new Known(line.channel(), line.address()));
    }

    private static boolean same(Line line, String from) {
        return line.address().toLowerCase(Locale.ROOT).equals(from);
    }
}
