package yardlight.gateway.coverage;

import java.time.Instant;
import java.util.List;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gaps;

/**
 * The gap to name of one site, as the API shows it.
 *
 * @param priorities whose alarms are called to nobody at once
 * @param from inclusive
 * @param to exclusive
 * @param more how many other gaps the site has
 */
public record GapView(String site, List<String> priorities, Instant from, Instant to, int more) {

    /** The gap in this form. */
    public static GapView of(String site, Gaps.Ahead ahead) {
        return new GapView(
                site,
                ahead.named().priorities().stream().map(Priority::word).toList(),
                ahead.named().from(),
                ahead.named().to(),
                ahead.more());
    }
}
