package yardlight.gateway.people;

import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.LogBook;

/**
 * Puts into the log who may sign in and who did from where. What happened has happened when the line is written, so nobody
 * waits for the line, and one that cannot be stored is at least in the gateway's output.
 */
@Component
public class DoorLog {

    private static final Logger LOG = LoggerFactory.getLogger(DoorLog.class);

    private final LogBook book;
    private final Intake intake;

    DoorLog(LogBook book, Intake intake) {
        this.book = book;
        this.intake = intake;
    }

    /**
     * @param person the login that it is about
     * @param words one sentence, without anything secret
     */
    public void say(String person, String words) {
        handed(words, book.put(new Entry(Entry.What.LOGIN, Map.of("person", person), words)));
    }

    /** Somebody signed in with something new: the line, and the texts about it. */
    void say(Stimulus.SignedIn said) {
        handed(said.words(), intake.put(said));
    }

    private static void handed(String words, CompletableFuture<Answer> line) {
        LOG.info("{}", words);
        line.whenComplete((stored, failure) -> {
            if (failure != null) {
                LOG.warn("this line is missing in the log: {}", words, failure);
            }
        });
    }
}
