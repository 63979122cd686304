package yardlight.db.incoming;

/**
 * A receipt with the notice that it is about.
 *
 * @param id the receipt's
 * @param line index of the contact's line that the notice went to
 */
public record Meant(String id, String notice, int line, String channel, String fate, String detail) {}
