package yardlight.gateway.alarms;

import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.Told;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.sentence.Sentence;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;

/** Does something to the alarm that a person has before them, and not to a newer one that they have not seen. */
@Component
public class Actions {

    private static final Sentence NEWER =
            Sentence.of("alarm.newer", "this alarm has occurred again since; look at the newest occurrence");

    private final Alarms alarms;
    private final Told told;
    private final Lane lane;

    Actions(Alarms alarms, Told told, Lane lane) {
        this.alarms = alarms;
        this.told = told;
        this.lane = lane;
    }

    /**
     * Hands the action to the lane.
     *
     * @return the alarm afterwards
     * @throws Problem 404 when there is no such alarm; 409 when another occurrence has followed it, or when the rules
     *     refuse, with their reason
     */
    public RecordedAlarm act(String id, Function<AlarmKey, Stimulus> action) {
        AlarmKey key = current(id).alarm().key();
        Answer answer = lane.decide(action.apply(key));
        if (answer instanceof Answer.Refusal refusal) {
            throw Problem.of(HttpStatus.CONFLICT, refusal.why());
        }
        return found(id);
    }

    RecordedAlarm current(String id) {
        RecordedAlarm asked = found(id);
        if (!told.newest(asked.alarm().key()).equals(Optional.of(id))) {
            throw Problem.of(HttpStatus.CONFLICT, NEWER);
        }
        return asked;
    }

    RecordedAlarm found(String id) {
        return alarms.byId(id).orElseThrow(() -> Problem.notFound("there is no such alarm"));
    }
}
