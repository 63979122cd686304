package yardlight.gateway.stage;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.rehearsal.Unheard;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;

/**
 * Plays rehearsals, one at a time: a long ladder is a lot of work, and the alarms come first. Who wants nothing more by a line
 * now does not get a rehearsed text by it either.
 */
@Component
public class Stage {

    private final Alarms alarms;
    private final Semaphore one = new Semaphore(1, true);

    Stage(Alarms alarms) {
        this.alarms = alarms;
    }

    /** The whole night, however long. */
    public List<Rehearsal.Line> play(Setup setup, Rehearsal.Question question) {
        return play(setup, question, Integer.MAX_VALUE);
    }

    /** @param most as in {@link Rehearsal#of} */
    public List<Rehearsal.Line> play(Setup setup, Rehearsal.Question question, int most) {
        Set<AlarmKey> stops = stops();
        return alone(() -> Rehearsal.of(setup, question, stops, most));
    }

    /** When nobody would hear it, from the time of the question on. */
    public List<Unheard.Span> unheard(Setup setup, Rehearsal.Question question, Instant to) {
        Set<AlarmKey> stops = stops();
        return alone(() -> Unheard.of(setup, question, to, stops));
    }

    private <T> T alone(Supplier<T> work) {
        one.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            one.release();
        }
    }

    Set<AlarmKey> stops() {
        return Stop.among(alarms.currentAt(Site.GATEWAY));
    }
}
