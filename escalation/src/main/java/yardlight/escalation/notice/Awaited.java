package yardlight.escalation.notice;

import java.time.Instant;

/**
 * A carrier that says later what becomes of a notice has taken it, and has not said so yet.
 *
 * @param since when it took it
 * @param until when it should have said something; after that the next line is tried
 */
public record Awaited(Instant since, Instant until) {}
