package yardlight.escalation.wording;

import java.time.Instant;
import java.util.Optional;

/**
 * What became of something that the reader of a text was called for.
 *
 * @param worst the worst of its alarms
 * @param alarms how many there are
 * @param began when the first of them did, as far as that is known
 * @param over when the last of them returned; empty while one holds
 * @param taken who has it; empty when that it is over is the news
 * @param code what its reader still has to answer with; empty when nothing is left to do
 */
public record Tiding(
        Subject worst,
        int alarms,
        Optional<Instant> began,
        Optional<Instant> over,
        Optional<Taken> taken,
        Optional<Integer> code) {

    /** Somebody has it. */
    public record Taken(String name, Instant since) {}
}
