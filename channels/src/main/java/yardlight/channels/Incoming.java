package yardlight.channels;

import java.time.Instant;

/**
 * A text that somebody wrote to us.
 *
 * @param channel the channel by which it came, and by which an answer would go
 * @param id what the carrier calls it, or what comes nearest to that: the same channel and id is the same text again
 * @param from the address that the carrier vouches for, in the form in which a message to it would be addressed; never
 *     taken from the text itself
 * @param text as it was written, of any length and with any characters
 * @param at when the carrier got it, or else when we did
 */
public record Incoming(String channel, String id, String from, String text, Instant at) {

    public Incoming {
        if (channel == null || id == null || from == null || text == null || at == null) {
            throw new IllegalArgumentException(
                    "an incoming text has a channel, an id, a sender, words and a time: " + id);
        }
    }
}
