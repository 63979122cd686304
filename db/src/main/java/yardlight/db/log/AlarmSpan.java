package yardlight.db.log;

import java.time.Instant;
import java.util.Optional;

/**
 * Where in the log the story of one occurrence of an alarm stands.
 *
 * @param alarm id of the occurrence
 * @param local the alarm at its site, {@code water-tank/high-high}
 * @param callout the newest callout for it
 * @param from not before this
 * @param to before this; empty when nothing has followed it
 */
public record AlarmSpan(
        String site, String alarm, String local, Optional<String> callout, Instant from, Optional<Instant> to) {}
