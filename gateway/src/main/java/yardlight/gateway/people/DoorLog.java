package yardlight.gateway.people;

import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.escalation.Entry;
import yardlight.gateway.lane.LogBook;

/**
 * Puts into the log who may sign in and who did from where. What happened has happened when the line is written, so nobody
 * waits for the line, and one that cannot be stored is at least in the gateway's output.
 */
@Component
public class DoorLog {

    private static final Logger LOG = LoggerFactory.getLogger(DoorLog.class);

    private final LogBook book;

    DoorLog(LogBook book) {
        this.book = book;
    }

    /**
     * @param person the login that it is about
     * @param words one sentence, without anything secret
     */
    public void say(String person, String words) {
        LOG.info("{}", words);
        book.put(new Entry(Entry.What.LOGIN, Map.of("person", person), words)).whenComplete((stored, failure) -> {
            if (failure != null) {
                LOG.warn("this line is missing in the log: {}", words, failure);
            }
        });
    }
}
