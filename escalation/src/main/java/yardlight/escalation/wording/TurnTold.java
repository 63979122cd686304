package yardlight.escalation.wording;

import java.time.Instant;
import java.time.ZoneId;

/**
 * Something about a turn that somebody is to hear.
 *
 * @param who the name of the other one
 * @param roster its id
 * @param from start of the time that it is about, inclusive
 * @param to end, exclusive
 * @param zone of the roster
 * @param code to answer with; 0 where no answer is wanted
 */
public record TurnTold(Kind kind, String who, String roster, Instant from, Instant to, ZoneId zone, int code) {

    /** What it is. */
    public enum Kind {
        /** The other one asks whether the reader takes it. */
        ASKED,
        /** The other one takes it from the reader. */
        TAKEN,
        /** The reader took it from the other one. */
        TAKES,
        /** Nobody takes it from the reader. */
        DECLINED,
        /** Nobody has taken it from the reader in time. */
        EXPIRED,
        /** The reader is on call from now on; the other one was before. */
        COMES_ON,
        /** The reader was on call until now; the other one is from now on. */
        GOES_OFF
    }
}
