package yardlight.escalation.rehearsal;

import java.time.Instant;
import yardlight.escalation.Decision;
import yardlight.escalation.Stimulus;

/** One step of a simulated night: what happened when, and what was decided. */
public record Happening(Instant at, Stimulus stimulus, Decision decision) {}
