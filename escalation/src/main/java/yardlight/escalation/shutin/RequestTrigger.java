package yardlight.escalation.shutin;

/** What can happen to a request to shut in. */
public enum RequestTrigger {
    /** It is about to be sent to the relay. */
    TRY,
    /** The box's heartbeat is answered with it, or the relay said that it took it. */
    TAKE,
    /** The relay was not reached, or said that it did not take it. */
    NOT_TAKEN,
    /** It was sent to the relay, and no answer came. */
    UNKNOWN,
    /** Time went by. */
    TIME,
    /** The site says that it is shut in. */
    CONFIRM,
    /** The site says that it does not do it. */
    REFUSE,
    /** The owner takes it back. */
    WITHDRAW
}
