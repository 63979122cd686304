package yardlight.gateway.lane;

import java.time.Instant;
import java.util.List;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;

/**
 * The one way in which anything is changed. Whatever is handed in is gathered with what others hand in, decided by the
 * engine, and stored in one transaction; each method comes back when it is on disk, and not before.
 *
 * <p>All methods throw {@link LaneBusy} when the lane is full or the database does not answer.
 */
public interface Lane {

    /**
     * @param spent whether the box has spent its allowance: then only what is news is taken
     * @return one result for each event, in order
     * @throws TooManyPosts when the allowance is spent and nothing in it is news; nothing is stored
     * @throws UnknownBox when the box is not set up (any more); nothing is stored
     */
    List<Answer.Result> events(String box, List<PostedEvent> events, boolean spent);

    /**
     * @param oldest readings from before are not kept
     * @param spent whether the box has spent its allowance: then only what changes an alarm is taken
     * @return what became of each reading, in order
     * @throws TooManyPosts when the allowance is spent and nothing in it changes an alarm; nothing is stored
     * @throws UnknownBox when the box is not set up (any more); nothing is stored
     * @throws OtherUnit when a point is stored in another unit by now; nothing is stored
     */
    List<Fate> readings(String box, List<PostedReading> readings, Instant oldest, boolean spent);

    /**
     * @return with a request for the box, if there is one: it counts as handed over from here on
     * @throws UnknownBox when the box is not set up (any more); nothing is stored
     */
    Answer heartbeat(String box, Heartbeat heartbeat);

    /**
     * Has one thing decided.
     *
     * @throws IllegalArgumentException for another setup: that comes with its document, by {@link #setup}
     */
    Answer decide(Stimulus stimulus);

    /**
     * Stores another setup together with what it changes at once.
     *
     * @param document as it was handed in, and as the next start reads it
     */
    Answer setup(String document, Stimulus.SetupChanged change);

    /**
     * The same, if the setup that holds is still the one that was looked at; nothing is stored otherwise.
     *
     * @param seen the version of it; 0 when there was none
     * @return a refusal when another version holds by now
     */
    Answer setup(String document, Stimulus.SetupChanged change, int seen);
}
