package yardlight.escalation.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Tells the alarms that wear people out from the others: chattering, fleeting, stale (ISA-18.2, monitoring and assessment). */
public final class Nuisance {

    /** How many activations an alarm remembers; enough for every {@link Numbers} that makes sense. */
    public static final int KEPT = 20;

    /**
     * The numbers are parameters because the standard gives them as usual values, not as limits.
     *
     * @param count activations that make a chattering alarm
     * @param within window in which they fall, both ends included
     * @param settle how long a chattering alarm must be over before it counts as over
     * @param fleeting an alarm that comes and goes within this time, end included, without an answer is fleeting
     * @param stale an alarm active for longer than this is stale
     */
    public record Numbers(int count, Duration within, Duration settle, Duration fleeting, Duration stale) {

        /** Three within a minute; stale after 24 h; settle and fleeting are ours, the standard has no number for them. */
        public static final Numbers USUAL = new Numbers(
                3, Duration.ofMinutes(1), Duration.ofMinutes(2), Duration.ofSeconds(10), Duration.ofHours(24));

        /** For boxes that come and go over a bad link: three silences within an hour, settled after a quarter of an hour. Ours. */
        public static final Numbers SLOW = new Numbers(
                3, Duration.ofHours(1), Duration.ofMinutes(15), Duration.ofSeconds(10), Duration.ofHours(24));

        public Numbers {
            if (count < 2 || count > KEPT) {
                throw new IllegalArgumentException("chatter count must be 2 to " + KEPT + ": " + count);
            }
            for (Duration span : List.of(within, settle, fleeting, stale)) {
                if (span.isNegative()) {
                    throw new IllegalArgumentException("nuisance times must not be negative: " + span);
                }
            }
        }
    }

    private Nuisance() {}

    /**
     * Whether the newest activations came so close that the alarm chatters. It goes on to count as chattering until an
     * activation comes that is far enough from the ones before.
     *
     * @param activations oldest first
     */
    public static boolean chattering(List<Instant> activations, Numbers numbers) {
        int size = activations.size();
        if (size < numbers.count()) {
            return false;
        }
        Instant first = activations.get(size - numbers.count());
        return Duration.between(first, activations.get(size - 1)).compareTo(numbers.within()) <= 0;
    }

    /** Whether an occurrence that began and ended at these instants, unanswered, was fleeting. */
    public static boolean fleeting(Instant occurredAt, Instant returnedAt, Numbers numbers) {
        return Duration.between(occurredAt, returnedAt).compareTo(numbers.fleeting()) <= 0;
    }

    /** Whether an alarm active since {@code occurredAt} is stale: longer than the limit, not equal to it. */
    public static boolean stale(Instant occurredAt, Instant now, Numbers numbers) {
        return Duration.between(occurredAt, now).compareTo(numbers.stale()) > 0;
    }
}
