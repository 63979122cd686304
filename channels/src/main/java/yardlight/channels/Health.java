package yardlight.channels;

/**
 * How a channel stands, for the owner to read.
 *
 * @param sentence for a person, such as {@code mail goes out through smtp.example:587}
 */
public record Health(State state, String sentence) {

    /** Whether the channel can be counted on. */
    public enum State {
        /** Set up, and nothing is known against it. */
        READY,
        /** Set up, but the last try failed for a reason that is not the address's: messages wait. */
        TROUBLED,
        /** Not set up: messages wait. */
        NOT_CONFIGURED
    }
}
