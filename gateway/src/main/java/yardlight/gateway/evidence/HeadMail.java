package yardlight.gateway.evidence;

import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.stereotype.Component;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Message;
import yardlight.db.evidence.LogTree;
import yardlight.db.evidence.SentHeads;
import yardlight.db.evidence.SignedHead;
import yardlight.escalation.Entry;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.seal.SigningKey;

/**
 * Sends the head of the log out of the house once a day: whoever has it can show later that nothing before it was changed.
 * What a carrier does not take is tried again at the next round, with the same identity.
 */
@Component
@EnableConfigurationProperties(HeadsSettings.class)
class HeadMail {

    private static final Logger LOG = LoggerFactory.getLogger(HeadMail.class);

    /** The channel that reaches a mailbox, by the name that lines give it. */
    private static final String MAIL = "mail";

    private final HeadsSettings settings;
    private final LogTree tree;
    private final SigningKey key;
    private final SentHeads sent;
    private final Optional<Channel> mail;
    private final LogBook book;
    private final InstantSource clock;

    HeadMail(
            HeadsSettings settings,
            LogTree tree,
            SigningKey key,
            SentHeads sent,
            List<Channel> channels,
            LogBook book,
            InstantSource clock) {
        this.settings = settings;
        this.tree = tree;
        this.key = key;
        this.sent = sent;
        this.mail =
                channels.stream().filter(channel -> channel.name().equals(MAIL)).findFirst();
        this.book = book;
        this.clock = clock;
    }

    /** Sends what is due today and was not taken yet. */
    void round() {
        ZonedDateTime now = clock.instant().atZone(settings.zone());
        LocalDate day = now.toLocalDate();
        if (settings.to().isEmpty() || now.toLocalTime().isBefore(settings.at())) {
            return;
        }
        List<String> missing = settings.to().stream()
                .filter(address -> !sent.isSent(address, day))
                .toList();
        if (missing.isEmpty()) {
            return;
        }
        SignedHead head = key.sign(tree.head());
        missing.forEach(address -> send(address, day, head));
    }

    private void send(String address, LocalDate day, SignedHead head) {
        var message = new Message(id(address, day), address, words(day, head), clock.instant());
        Attempt attempt = mail.map(channel -> channel.send(message))
                .orElseThrow(() -> new IllegalStateException("there is no channel " + MAIL));
        if (attempt.outcome() == Attempt.Outcome.ACCEPTED) {
            sent.keep(address, day, head.size());
            book.put(new Entry(
                    Entry.What.HEAD,
                    Map.of(),
                    "the head of " + head.size() + " lines was mailed to address "
                            + (settings.to().indexOf(address) + 1) + " of yardlight.heads.to, root " + head.root()));
        } else {
            LOG.warn(
                    "the head of the log was not mailed to {}, and is tried again in ten minutes: {} {}",
                    address,
                    attempt.outcome(),
                    attempt.detail());
        }
    }

    private static String id(String address, LocalDate day) {
        return "head-" + day + "-" + UUID.nameUUIDFromBytes(address.getBytes(StandardCharsets.UTF_8));
    }

    private static String words(LocalDate day, SignedHead head) {
        return "Yardlight: head of the log, " + day
                + ". Keep this mail: with it anybody can show that none of the first "
                + head.size() + " lines was changed later. Nothing needs to be done.\n\n"
                + "The line below is the head; save it as head.json. docs/verify.md says how it is used.\n\n"
                + head.json() + "\n";
    }
}
