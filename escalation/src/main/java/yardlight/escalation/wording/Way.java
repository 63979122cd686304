package yardlight.escalation.wording;

/**
 * One of the ways in which the reader of a text is reached.
 *
 * @param number its place in their list, from 1 on
 * @param channel what it goes by
 */
public record Way(int number, String channel) {}
