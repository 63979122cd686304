package yardlight.escalation.alarm;

import java.time.Instant;
import java.util.Optional;

/**
 * What was reported of one condition of one point.
 *
 * @param key which alarm it is about
 * @param box the box that said so; empty when the gateway itself found out, as with silence
 * @param active whether the condition holds
 * @param priority the priority that came with the report, if any
 * @param measured the numbers that came with it
 * @param at when it happened
 * @param declared whether {@code at} is the box's own time; else it is the time of arrival
 * @param request id of the request that the box answers by it, if it says so
 */
public record Report(
        AlarmKey key,
        Optional<String> box,
        boolean active,
        Optional<Priority> priority,
        Measured measured,
        Instant at,
        boolean declared,
        Optional<String> request) {

    /** One that answers no request. */
    public Report(
            AlarmKey key,
            Optional<String> box,
            boolean active,
            Optional<Priority> priority,
            Measured measured,
            Instant at,
            boolean declared) {
        this(key, box, active, priority, measured, at, declared, Optional.empty());
    }
}
