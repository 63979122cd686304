package yardlight.escalation.alarm;

import java.time.Duration;
import java.util.Optional;

/**
 * How a point's alarms take their time.
 *
 * @param onDelay how long the condition must hold before the alarm occurs
 * @param offDelay how long it must be over before the alarm returns
 * @param latching whether the alarm stays until a person resets it
 * @param realarm after which time an acknowledged or exhausted alarm is called again while its condition stays
 * @param nuisance the numbers that tell a nuisance from an alarm
 */
public record Timing(
        Duration onDelay, Duration offDelay, boolean latching, Optional<Duration> realarm, Nuisance.Numbers nuisance) {

    public static final Timing PLAIN =
            new Timing(Duration.ZERO, Duration.ZERO, false, Optional.empty(), Nuisance.Numbers.USUAL);

    public Timing {
        notNegative("onDelay", onDelay);
        notNegative("offDelay", offDelay);
        realarm.ifPresent(every -> {
            if (every.isNegative() || every.isZero()) {
                throw new IllegalArgumentException("realarm must be positive: " + every);
            }
        });
    }

    private static void notNegative(String what, Duration delay) {
        if (delay.isNegative()) {
            throw new IllegalArgumentException(what + " must not be negative: " + delay);
        }
    }
}
