package yardlight.gateway.alarms;

import java.util.Map;
import java.util.concurrent.CompletionException;
import org.springframework.stereotype.Component;
import yardlight.escalation.Entry;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.problem.Problem;

/** What people want to be remembered about an alarm: a line of the log, which changes nothing else. */
@Component
public class Notes {

    /** Characters of a note, and of a reason. */
    public static final int LONGEST = 200;

    private final Actions actions;
    private final LogBook log;

    Notes(Actions actions, LogBook log) {
        this.actions = actions;
        this.log = log;
    }

    /**
     * Keeps a note; comes back when it is on disk.
     *
     * @param by login or contact
     * @throws Problem 404 when there is no such alarm, 409 when another occurrence has followed it
     */
    public void keep(String id, String text, String by) {
        Alarm alarm = actions.current(id).alarm();
        var about = Map.of("site", alarm.key().site(), "alarm", alarm.id());
        var line = new Entry(Entry.What.ANSWER, about, alarm.key().local() + " note by " + by + ": " + text);
        try {
            log.put(line).join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}
