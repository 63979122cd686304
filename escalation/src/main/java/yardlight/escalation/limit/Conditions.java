package yardlight.escalation.limit;

import java.util.Set;

/** The conditions that are found here, by the words of the outside contract. */
public final class Conditions {

    public static final String HIGH_HIGH = "high-high";
    public static final String HIGH = "high";
    public static final String LOW = "low";
    public static final String LOW_LOW = "low-low";
    public static final String RISING = "rising-fast";
    public static final String FALLING = "falling-fast";
    public static final String DRIFT = "drift";
    public static final String STUCK = "stuck";
    public static final String MISSING = "missing";
    public static final String FAULT = "sensor-fault";

    /** All of them. */
    public static final Set<String> ALL =
            Set.of(HIGH_HIGH, HIGH, LOW, LOW_LOW, RISING, FALLING, DRIFT, STUCK, MISSING, FAULT);

    private Conditions() {}
}
