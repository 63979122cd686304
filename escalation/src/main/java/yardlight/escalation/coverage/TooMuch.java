package yardlight.escalation.coverage;

/**
 * So much is set up that to work out its coverage would take longer than anybody waits: about the square of the number of
 * people who are called together, each with quiet hours of their own. What was worked out before can still be asked for.
 */
public final class TooMuch extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TooMuch() {
        super("too many people with quiet hours of their own are called together to look so far ahead");
    }
}
