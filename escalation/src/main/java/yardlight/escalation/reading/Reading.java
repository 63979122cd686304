package yardlight.escalation.reading;

import java.time.Instant;

/**
 * One number that a box measured.
 *
 * @param value in the point's own unit: whoever hands it in has converted what the box said. A current loop's value is
 *     scaled without being cut off at its ends, so that the current can be told from it
 * @param at when it was measured, as far as that is known; never after it was received
 */
public record Reading(String site, String point, double value, Instant at) {
    public Reading {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value of a reading must be a number: " + value);
        }
    }
}
