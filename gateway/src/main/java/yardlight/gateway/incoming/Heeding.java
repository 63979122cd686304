package yardlight.gateway.incoming;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.incoming.Meant;
import yardlight.db.incoming.Receipts;
import yardlight.escalation.Stimulus;
import yardlight.escalation.Stimulus.Fate;
import yardlight.gateway.lane.Intake;

/** Tells the engine what carriers said of notices. */
final class Heeding {

    private static final Logger LOG = LoggerFactory.getLogger(Heeding.class);

    /** Carriers give up after a day or three; later than that a receipt changes nothing. */
    private static final Duration LONGEST = Duration.ofDays(4);

    /** How long after a receipt it may come on record that its message was taken. What is about no message of ours waits no longer. */
    private static final Duration USUAL = Duration.ofMinutes(10);

    private static final int AT_ONCE = 200;

    private final Receipts receipts;
    private final Intake intake;
    private final InstantSource clock;

    /** After a start, and after trouble, there may be old ones; else each is looked after while it is new. */
    private Duration back = LONGEST;

    Heeding(Receipts receipts, Intake intake, InstantSource clock) {
        this.receipts = receipts;
        this.intake = intake;
        this.clock = clock;
    }

    void look() {
        List<Meant> open = receipts.open(clock.instant().minus(back), AT_ONCE);
        back = LONGEST;
        boolean all = open.size() < AT_ONCE;
        for (Meant meant : open) {
            try {
                fate(meant).ifPresent(fate -> tell(meant, fate));
                receipts.heeded(meant.id(), clock.instant());
            } catch (CompletionException e) {
                all = false;
                LOG.warn(
                        "what {} says of notice {} is told later: {}", meant.channel(), meant.notice(), e.getMessage());
            }
        }
        if (all) {
            back = USUAL;
        }
    }

    private void tell(Meant meant, Fate fate) {
        String words = meant.channel() + ": " + meant.detail();
        intake.put(new Stimulus.NoticeFate(meant.notice(), meant.line(), fate, words))
                .join();
    }

    /** Action decides: what is only late may still get there. */
    private static Optional<Fate> fate(Meant meant) {
        return switch (meant.fate()) {
            case "delivered" -> Optional.of(Fate.DELIVERED);
            case "refused" -> Optional.of(Fate.REFUSED);
            default -> Optional.empty();
        };
    }
}
