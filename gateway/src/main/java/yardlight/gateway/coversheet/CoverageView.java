package yardlight.gateway.coversheet;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.coverage.Gap;
import yardlight.escalation.coverage.Heard;
import yardlight.escalation.coverage.Stretch;
import yardlight.escalation.coverage.Why;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.coverage.Coverages;

/**
 * Whom alarms of a site would reach.
 *
 * @param from inclusive
 * @param to exclusive
 * @param inService while it is false nobody is called, and there is nothing else to say
 * @param coverage priorities for which it is the same stand together
 */
record CoverageView(String site, Instant from, Instant to, boolean inService, List<Covered> coverage) {

    /** Of some priorities, in order and without a break. */
    record Covered(List<String> priorities, List<StretchView> stretches) {}

    /**
     * A time in which the same people would be reached in the same way.
     *
     * @param from inclusive
     * @param to exclusive
     * @param gap whether nobody is called at once
     * @param reasons why it is a gap, or why it is doubtful that somebody hears
     * @param first who hears first; none when nobody does within eight days
     * @param second the next one who is another person
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record StretchView(
            Instant from,
            Instant to,
            boolean gap,
            List<String> reasons,
            Optional<Hearer> first,
            Optional<Hearer> second) {}

    /**
     * Who hears.
     *
     * @param after so long after the alarm, whenever in the stretch it comes
     * @param at the end of their quiet hours instead
     * @param lines best first
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Hearer(String contact, Optional<Duration> after, Optional<Instant> at, List<HearerLine> lines) {}

    /** @param proven whether something showed within 30 days that it works */
    record HearerLine(String channel, boolean proven) {}

    static List<Covered> of(Coverages.Found found, String site, Set<Priority> priorities) {
        Map<List<Stretch>, Set<Priority>> groups = new LinkedHashMap<>();
        priorities.forEach(priority -> groups.computeIfAbsent(
                        found.coverage().of(site, priority), any -> EnumSet.noneOf(Priority.class))
                .add(priority));
        return groups.entrySet().stream()
                .map(group -> new Covered(
                        group.getValue().stream().map(Priority::word).toList(),
                        group.getKey().stream()
                                .map(stretch -> view(stretch, found, site, group.getValue()))
                                .toList()))
                .toList();
    }

    private static StretchView view(Stretch stretch, Coverages.Found found, String site, Set<Priority> priorities) {
        return new StretchView(
                stretch.from(),
                stretch.to(),
                !stretch.heardAtOnce(),
                reasons(stretch, found, site, priorities),
                stretch.first().map(one -> person(one, found)),
                stretch.second().map(one -> person(one, found)));
    }

    private static List<String> reasons(Stretch stretch, Coverages.Found found, String site, Set<Priority> priorities) {
        if (stretch.heardAtOnce()) {
            return found.coverage().proven(stretch) ? List.of() : List.of(Why.UNPROVEN_LINE.word());
        }
        return found.coverage().why(site, new Gap(stretch.from(), stretch.to(), priorities)).stream()
                .map(Why::word)
                .toList();
    }

    private static Hearer person(Heard heard, Coverages.Found found) {
        Contact contact = found.setup().contacts().get(heard.contact());
        return new Hearer(
                heard.contact(),
                heard.after(),
                heard.at(),
                KnownLines.of(contact, found.health()).stream()
                        .map(line -> new HearerLine(line.key().channel(), line.proven(found.now())))
                        .toList());
    }
}
