package yardlight.channels;

import java.time.Instant;

/**
 * A text that somebody wrote to us.
 *
 * @param channel the channel by which it came, and by which an answer would go
 * @param id what the carrier calls it, or what comes nearest to that: the same channel and id is the same text again
 * @param from the sender's address, in the form in which a message to it would be addressed; never taken from the words
 * @param text as it was written, of any length and with any characters
 * @param at when the carrier got it, or else when we did
 * @param proven whether the carrier, or something else that not everybody has, vouches for the sender; if not, {@code from} is
 *     what the text says of itself, and only what else it shows to know may be believed
 */
public record Incoming(String channel, String id, String from, String text, Instant at, boolean proven) {

    /** One whose sender the carrier vouches for. */
    public Incoming(String channel, String id, String from, String text, Instant at) {
        this(channel, id, from, text, at, true);
    }

    public Incoming {
        if (channel == null || id == null || from == null || text == null || at == null) {
            throw new IllegalArgumentException(
                    "an incoming text has a channel, an id, a sender, words and a time: " + id);
        }
    }
}
