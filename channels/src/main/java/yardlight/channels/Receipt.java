package yardlight.channels;

import java.time.Instant;

/**
 * What the carrier says later of a message that it had accepted.
 *
 * @param channel the channel that had handed the message over
 * @param reference what the carrier called the message when it accepted it: {@link Attempt#reference()}
 * @param detail in the carrier's own words; made to be one line as in {@link Attempt}
 * @param at when that became so, by the carrier's account, or else when we heard of it
 */
public record Receipt(String channel, String reference, Fate fate, String detail, Instant at) {

    /** What became of it. */
    public enum Fate {
        /** It is on the person's phone or in their mailbox. */
        DELIVERED,
        /** It will not get there. */
        REFUSED,
        /** It is on its way still, and later than usual. */
        DELAYED
    }

    public Receipt {
        if (channel == null || reference == null || fate == null || at == null) {
            throw new IllegalArgumentException("a receipt has a channel, a reference, a fate and a time: " + reference);
        }
        detail = Attempt.oneLine(detail);
    }
}
