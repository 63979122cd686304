package yardlight.escalation.swap;

/** What can happen to a turn that was offered. */
public enum OfferTrigger {
    /** Somebody who was asked says yes, and the roster is changed in the same moment. */
    TAKE,
    /** Somebody who was asked says no. */
    DECLINE,
    /** Whoever asked takes it back. */
    WITHDRAW,
    /** The roster does not say any more that whoever asked has this turn. */
    LAPSE,
    /** Time went by. */
    TIME
}
