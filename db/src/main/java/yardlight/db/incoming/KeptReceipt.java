package yardlight.db.incoming;

import java.time.Instant;

/**
 * What a carrier said of a message that it had taken.
 *
 * @param reference what it called the message; at most 300 characters
 * @param fate a word such as {@code delivered}
 * @param saidAt when it was so, by the carrier's account
 */
public record KeptReceipt(String channel, String reference, String fate, String detail, Instant saidAt) {

    /** The same thing said again of the same message is the same receipt. */
    public String id() {
        return channel + "/" + fate + "/" + reference;
    }
}
