package yardlight.db.incoming;

import java.time.Instant;

/**
 * A text that came in.
 *
 * @param id of the channel and what the carrier calls it; the same id is the same text. At most 400 characters
 * @param sender the address that it came from, and that an answer goes to
 * @param words cut after 2000 characters, without U+0000, which PostgreSQL does not keep
 * @param answer one line; empty when it is not answered
 */
public record IncomingText(String id, String channel, String sender, String words, Instant receivedAt, String answer) {

    private static final int LONGEST = 2000;

    public IncomingText {
        words = words.replace("\0", "");
        words = words.length() <= LONGEST ? words : words.substring(0, LONGEST);
    }
}
