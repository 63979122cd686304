package yardlight.gateway.incoming;

import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.Locale;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;
import yardlight.channels.Incoming;
import yardlight.channels.Receipt;
import yardlight.db.incoming.IncomingText;
import yardlight.db.incoming.IncomingTexts;
import yardlight.db.incoming.KeptReceipt;
import yardlight.db.incoming.Receipts;

/**
 * Takes in what channels bring. A text is kept together with its answer, after what it asks for was done: when the gateway dies
 * in between, the carrier brings it again, and it does no harm to ask for the same thing twice.
 */
final class Arrivals implements Inbox {

    private static final Logger LOG = LoggerFactory.getLogger(Arrivals.class);

    private static final int LONGEST_ID = 300;
    private static final int LONGEST_SENDER = 400;

    private final IncomingTexts texts;
    private final Receipts receipts;
    private final Asked asked;
    private final InstantSource clock;
    private final Runnable wake;
    private final Turns turns = new Turns();

    /** @param wake called when there is something to send or to heed */
    Arrivals(IncomingTexts texts, Receipts receipts, Asked asked, InstantSource clock, Runnable wake) {
        this.texts = texts;
        this.receipts = receipts;
        this.asked = asked;
        this.clock = clock;
        this.wake = wake;
    }

    @Override
    public boolean take(Incoming text) {
        try {
            String id = text.channel() + "/" + bounded(text.id());
            if (text.from().length() > LONGEST_SENDER) {
                LOG.warn(
                        "a text by {} has a sender of {} characters and is left out",
                        text.channel(),
                        text.from().length());
            } else if (!texts.known(id)) {
                String answer = bounded(text, asked.answer(text.from(), text.text(), text.proven()));
                texts.keep(new IncomingText(id, text.channel(), text.from(), text.text(), clock.instant(), answer));
                wake.run();
            }
            return true;
        } catch (RuntimeException trouble) {
            LOG.warn(
                    "a text by {} is not taken now, the carrier is to bring it again: {}",
                    text.channel(),
                    trouble.toString());
            return false;
        }
    }

    @Override
    public boolean take(Receipt receipt) {
        try {
            String fate = receipt.fate().name().toLowerCase(Locale.ROOT);
            receipts.keep(
                    new KeptReceipt(
                            receipt.channel(), bounded(receipt.reference()), fate, receipt.detail(), receipt.at()),
                    clock.instant());
            wake.run();
            return true;
        } catch (RuntimeException trouble) {
            LOG.warn(
                    "a receipt by {} is not taken now, it is to be brought again: {}",
                    receipt.channel(),
                    trouble.toString());
            return false;
        }
    }

    private String bounded(Incoming text, String answer) {
        if (answer.isEmpty() || turns.take(text.channel() + "/" + text.from(), clock.instant())) {
            return answer;
        }
        LOG.warn(
                "a text by {} is not answered: its sender has had {} answers within {}",
                text.channel(),
                Turns.MOST,
                Turns.WITHIN);
        return "";
    }

    /** Whatever a carrier calls things: what is too long to be kept goes by a name of ours that is always the same. */
    private static String bounded(String id) {
        return id.length() <= LONGEST_ID
                ? id
                : UUID.nameUUIDFromBytes(id.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
