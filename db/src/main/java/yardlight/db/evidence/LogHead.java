package yardlight.db.evidence;

import java.time.Instant;

/**
 * How far the log had come at a time, and the hash that stands for all of it.
 *
 * @param first the line that is the first leaf; those before it are not in the tree
 * @param size the number of lines in the tree, from {@code first} on without a gap
 * @param root the hash of RFC 6962, 2.1, over all of them
 * @param at when something was written last
 */
public record LogHead(long first, long size, byte[] root, Instant at) {

    /** The number of the last line in it. */
    public long last() {
        return first + size - 1;
    }
}
