package yardlight.channels.mailbox;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Receipt;
import yardlight.channels.mail.MailNames;

/**
 * Brings to the inbox what a mail means, if anything. Anybody can write any address into From: who wrote is proven by a
 * reference to a mail of ours that went to that address, or by the word of the own mail server. What is not proven is brought
 * as such; what is known to be forged is not brought.
 */
final class Handing {

    private static final Logger LOG = LoggerFactory.getLogger(Handing.class);

    private final MailboxSettings settings;
    private final MailNames names;
    private final KnownLines lines;
    private final MailReader reader;

    Handing(MailboxSettings settings, MailNames names, KnownLines lines) {
        this.settings = settings;
        this.names = names;
        this.lines = lines;
        this.reader = new MailReader(settings.own());
    }

    /**
     * @param name what the mail is called if it does not say so itself
     * @return whether it is off the server's hands
     * @throws MessagingException when it cannot be read
     */
    boolean hand(MimeMessage mail, String name, Instant at, Inbox inbox) throws MessagingException, IOException {
        Meaning meaning = reader.read(mail);
        if (meaning instanceof Meaning.Report report) {
            return report(report, at, inbox);
        }
        if (meaning instanceof Meaning.Answer answer) {
            Results results = Results.of(new Fields(mail::getHeader), settings.authority(), answer.from());
            return answer(answer, results, name, at, inbox);
        }
        LOG.info("mail {} is left out: {}", name, ((Meaning.Automatic) meaning).why());
        return true;
    }

    private boolean report(Meaning.Report report, Instant at, Inbox inbox) {
        Optional<String> channel = report.about().flatMap(MailNames::channel);
        if (channel.isEmpty()) {
            LOG.info("a mail server reports of a mail that is none of ours, or does not say of which");
            return true;
        }
        return inbox.take(new Receipt(channel.get(), report.about().orElseThrow(), report.fate(), report.words(), at));
    }

    private boolean answer(Meaning.Answer answer, Results results, String name, Instant at, Inbox inbox) {
        Optional<KnownLines.Known> line = lines.from(answer.from());
        if (line.isEmpty()) {
            LOG.info("mail {} is left out: nobody has a line with the address that it comes from", name);
            return true;
        }
        if (results == Results.FORGED) {
            LOG.warn("mail {} is left out: by our mail server it is not from {}", name, answer.from());
            return true;
        }
        String address = line.get().address();
        Optional<String> named = answer.references().stream()
                .filter(id -> names.wentTo(id, address))
                .findFirst();
        boolean proven = named.isPresent() || results == Results.GENUINE;
        String channel = named.flatMap(MailNames::channel).orElse(line.get().channel());
        String id = answer.messageId().orElse(name);
        return inbox.take(new Incoming(channel, id, address, answer.text(), at, proven));
    }
}
