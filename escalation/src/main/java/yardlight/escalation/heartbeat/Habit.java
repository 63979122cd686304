package yardlight.escalation.heartbeat;

import java.util.Optional;

/**
 * What a box usually says of its battery and its signal, so that a fall shows: a running mean that takes a tenth of each
 * new value.
 *
 * @param battery in volts
 * @param signal in dBm
 */
public record Habit(Optional<Double> battery, Optional<Double> signal) {

    public static final Habit NONE = new Habit(Optional.empty(), Optional.empty());

    private static final double NEW = 0.1;
    /** A charged lead-acid battery stands at 13.6 V while it is charged and at 12.7 V when it is not. Common practice, no source. */
    private static final double FALLEN = 0.97;

    private static final double WEAKER = 8;

    Habit after(Heartbeat said) {
        return new Habit(mean(battery, said.battery()), mean(signal, said.signal()));
    }

    /** Whether the battery is lower than usual by 3 % or more. */
    boolean batteryFallen(Heartbeat last) {
        return battery.isPresent()
                && last.battery().filter(now -> now <= battery.get() * FALLEN).isPresent();
    }

    /** Whether the signal is weaker than usual by 8 dB or more. */
    boolean signalFallen(Heartbeat last) {
        return signal.isPresent()
                && last.signal().filter(now -> now <= signal.get() - WEAKER).isPresent();
    }

    private static Optional<Double> mean(Optional<Double> before, Optional<Double> now) {
        return now.map(value -> before.map(mean -> mean + NEW * (value - mean)).orElse(value))
                .or(() -> before);
    }
}
