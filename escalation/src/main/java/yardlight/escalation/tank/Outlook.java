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

    /** A line over less time than this has an interval that is wide for want of time and not for want of steadiness. */
    private static final Duration TELLS = Duration.ofMinutes(30);

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
                trend.map(line -> reach(capacity, line)),
                trend.filter(line -> line.fastest() < 0).isPresent(),
                worst);
    }

    /** In a few minutes a slug or two tell little: then the likely time counts and not the shortest possible. */
    private static Reach reach(double capacity, Trend line) {
        Reach reach = Reach.to(capacity, line);
        return line.over().compareTo(TELLS) >= 0
                ? reach
                : new Reach(reach.expected(), reach.expected().orElse(Reach.FARTHEST), reach.latest());
    }

    private static Duration after(double room, double rate) {
        double seconds = Math.max(0, room) / rate * 3600;
        return seconds < Reach.FARTHEST.toSeconds() ? Duration.ofSeconds(Math.round(seconds)) : Reach.FARTHEST;
    }

    /** The least time that may be left: no more than {@link Reach#FARTHEST}. While it goes down, that is no time from now. */
    public Duration least() {
        return falling ? Reach.FARTHEST : whateverItDoes();
    }

    /** The same if it does not go on falling. */
    public Duration whateverItDoes() {
        Duration now = present.map(Outlook::early).orElse(Reach.FARTHEST);
        Duration then = worst.orElse(Reach.FARTHEST);
        return now.compareTo(then) < 0 ? now : then;
    }

    /**
     * The early end of an interval that has no late end says nothing: nobody knows yet whether it rises at all. Then the likely
     * time counts, if there is one.
     */
    private static Duration early(Reach reach) {
        return reach.latest().isPresent() ? reach.earliest() : reach.expected().orElse(Reach.FARTHEST);
    }

    /** The same so much later, with no newer reading: that much less is left. */
    public Outlook after(Duration later) {
        return new Outlook(
                present.map(reach -> reach.after(later)), falling, worst.map(left -> Reach.less(left, later)));
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
