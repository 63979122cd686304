package yardlight.escalation.ladder;

import java.time.Duration;
import java.util.List;
import java.util.Locale;

/**
 * Whom to call, in what order, and how long to wait.
 *
 * @param endsWhen what ends a callout before the ladder is at its end
 * @param again climbs of the whole ladder after the first, before it is exhausted
 */
public record Ladder(String id, EndsWhen endsWhen, List<Rung> rungs, int again) {

    /** What a site without a ladder gets: better everybody once than nobody. */
    public static final Ladder EVERYBODY_ONCE = new Ladder(
            "everybody-once",
            EndsWhen.ACKNOWLEDGED,
            List.of(new Rung(List.of(Rung.EVERYONE), Duration.ofMinutes(15), 1)),
            0);

    /** Acknowledged always ends a callout; {@code NORMAL} says that the alarm's return does so too. */
    public enum EndsWhen {
        ACKNOWLEDGED,
        NORMAL;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Ladder {
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty()) {
            throw new IllegalArgumentException("ladder must have at least one rung: " + id);
        }
        if (again < 0) {
            throw new IllegalArgumentException("again must not be negative: " + again);
        }
    }
}
