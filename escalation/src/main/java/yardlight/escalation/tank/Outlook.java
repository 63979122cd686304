package yardlight.escalation.tank;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import yardlight.escalation.trend.Reach;
import yardlight.escalation.trend.Trend;

/**
 * When a tank runs over.
 *
 * @param present at the present rate, with its interval; empty when too little is known of it
 * @param falling whether it surely goes down
 * @param worst at the fastest that it filled in the last week; empty when that is not known
 */
public record Outlook(Optional<Reach> present, boolean falling, Optional<Duration> worst) {

    /** An alarm is over when so much more time is left than it was raised for: else noise would end and begin it. */
    private static final double HYSTERESIS = 1.25;

    /**
     * @param volume what is in the tank now
     * @param trend of the volume, in the tank's unit; empty when too little is known
     * @param fastest inflow of the last week, in volume an hour
     */
    public static Outlook of(Tank tank, double volume, Optional<Trend> trend, OptionalDouble fastest) {
        double capacity = tank.capacity();
        double stands = trend.map(Trend::value).orElse(volume);
        Optional<Duration> worst = fastest.isPresent() && fastest.getAsDouble() > 0
                ? Optional.of(after(capacity - stands, fastest.getAsDouble()))
                : Optional.empty();
        return new Outlook(
                trend.map(line -> Reach.to(capacity, line)),
                trend.filter(line -> line.fastest() < 0).isPresent(),
                worst);
    }

    private static Duration after(double room, double rate) {
        double seconds = Math.max(0, room) / rate * 3600;
        return seconds < Reach.FARTHEST.toSeconds() ? Duration.ofSeconds(Math.round(seconds)) : Reach.FARTHEST;
    }

    /** The least time that may be left: no more than {@link Reach#FARTHEST}. While it goes down, that is no time from now. */
    public Duration least() {
        return falling ? Reach.FARTHEST : whateverItDoes();
    }

    private Duration whateverItDoes() {
        Duration now = present.map(Reach::earliest).orElse(Reach.FARTHEST);
        Duration then = worst.orElse(Reach.FARTHEST);
        return now.compareTo(then) < 0 ? now : then;
    }

    /** What is most likely left at the present rate; empty when it does not rise, or nobody can say. */
    public Optional<Duration> expected() {
        return falling ? Optional.empty() : present.flatMap(Reach::expected);
    }

    /**
     * Whether less time may be left than it takes to do something. Once it is so, it stays so until a quarter more is left
     * whatever the level does: a pump that starts and stops near the brim is one alarm.
     *
     * @param held whether it was so before
     */
    public boolean tooShort(Response response, boolean held) {
        Duration needed = response.needed();
        return held ? whateverItDoes().toMillis() < HYSTERESIS * needed.toMillis() : least().compareTo(needed) < 0;
    }
}
