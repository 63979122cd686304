package yardlight.gateway.boxes;

import java.security.Principal;
import java.time.Instant;
import java.util.HashMap;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.db.boxkey.BoxKey;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Box;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Says in the log, and in the process's own, who made and who revoked a key. The key itself is in neither. */
@Component
class KeyLines {

    private static final Logger LOG = LoggerFactory.getLogger(KeyLines.class);

    private final LogBook book;
    private final SetupInForce inForce;

    KeyLines(LogBook book, SetupInForce inForce) {
        this.book = book;
        this.inForce = inForce;
    }

    /** @throws Problem 404 when no such box is set up */
    String site(String box) {
        return set(box).orElseThrow(() -> Problem.notFound("there is no such box in the setup"));
    }

    private Optional<String> set(String box) {
        return Optional.ofNullable(inForce.setup().boxes().get(box)).map(Box::site);
    }

    void made(Principal by, BoxKey key, Optional<Instant> othersEnd) {
        String words = by.getName() + " made key " + key.id() + " for box " + key.box();
        write(
                key.box(),
                othersEnd.map(end -> words + "; its others end at " + end).orElse(words));
    }

    void revoked(Principal by, String box, String key) {
        write(box, by.getName() + " revoked key " + key + " of box " + box);
    }

    /** It is done whether or not the line can be stored now. */
    private void write(String box, String words) {
        LOG.info(words);
        var about = new HashMap<String, String>();
        about.put("box", box);
        set(box).ifPresent(site -> about.put("site", site));
        book.put(new Entry(Entry.What.BOX, about, words)).whenComplete((stored, failure) -> {
            if (failure != null) {
                LOG.warn("not in the log: {}: {}", words, failure.toString());
            }
        });
    }
}
