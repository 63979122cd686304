package yardlight.gateway.posting;

import java.time.Instant;
import java.util.Optional;

/**
 * When something happened, as far as the box's clock can be believed.
 *
 * @param declared whether it is the box's own time
 * @param note what the box is told when its time was replaced
 */
public record When(Instant at, boolean declared, Optional<String> note) {

    /** No box of ours is older; an earlier time is a clock that has lost its battery. */
    private static final Instant OLDEST = Instant.parse("2020-01-01T00:00:00Z");

    public static When of(Optional<Instant> said, Instant received) {
        if (said.isEmpty()) {
            return new When(received, false, Optional.empty());
        }
        Instant at = said.get();
        if (at.isAfter(received)) {
            return new When(received, false, Optional.of("at is in the future; the time received is used instead"));
        }
        if (at.isBefore(OLDEST)) {
            return new When(received, false, Optional.of("at is before 2020; the time received is used instead"));
        }
        return new When(at, true, Optional.empty());
    }
}
