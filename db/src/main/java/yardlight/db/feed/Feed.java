package yardlight.db.feed;

import java.time.Instant;

/**
 * That a person's calendar can be read.
 *
 * @param tokenHash of the token in its address
 * @param by login of whoever asked for it
 */
public record Feed(String contact, String tokenHash, String by, Instant at) {}
