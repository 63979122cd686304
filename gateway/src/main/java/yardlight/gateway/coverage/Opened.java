package yardlight.gateway.coverage;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Gaps;

/**
 * The gaps that an edit opens: times in which before it somebody was called at once and after it nobody is.
 *
 * @param from when they were looked for
 * @param sites by id, with all of its new gaps in order; a site without one is not among them
 */
public record Opened(Instant from, Map<String, List<Gap>> sites) {

    /** With every day that passes another one comes within reach: the last ones of the search do not count for the sign. */
    private static final Duration EDGE = Duration.ofDays(10);

    public Opened {
        sites = Map.copyOf(sites);
    }

    public boolean nothing() {
        return sites.isEmpty();
    }

    /** What is to be named of a site that is among them. */
    public Gaps.Ahead of(String site) {
        return Gaps.ahead(sites.get(site)).orElseThrow();
    }

    /**
     * A sign that stands for these gaps and no others: whoever hands it in has been told of them. It is the same a little
     * later, also while one of them is running.
     */
    public String sign() {
        Instant edge = from.plus(Outlook.AHEAD).minus(EDGE);
        var lines = new ArrayList<String>();
        sites.keySet().stream().sorted().forEach(site -> {
            lines.add(site);
            sites.get(site).stream()
                    .filter(gap -> gap.from().isBefore(edge))
                    .map(gap -> line(gap, edge))
                    .forEach(lines::add);
        });
        return UUID.nameUUIDFromBytes(String.join("\n", lines).getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    private String line(Gap gap, Instant edge) {
        return (gap.from().isAfter(from) ? gap.from() : "now") + " "
                + (gap.to().isBefore(edge) ? gap.to() : "later") + " "
                + gap.priorities().stream().map(Priority::word).toList();
    }
}
