package yardlight.escalation;

/** Gives the next answer code. Codes go round, so that they stay short; one comes back only after all others. */
@FunctionalInterface
public interface Codes {

    int next();
}
