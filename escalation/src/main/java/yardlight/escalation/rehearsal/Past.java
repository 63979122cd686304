package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;

/**
 * What is remembered of a time: what happened to alarms, and which texts called people for it.
 *
 * @param from the time, inclusive
 * @param to exclusive: what begins later does not belong to it
 * @param deeds from its beginning on and for {@link #AFTER} longer, in the order in which they happened
 * @param texts the same of the texts about callouts that began in it
 * @param priorities by the id of the occurrence: the highest that it had
 */
public record Past(
        Instant from, Instant to, List<PastDeed> deeds, List<PastText> texts, Map<String, Priority> priorities) {

    /** Who answers later than this after the end of the time has not answered. */
    public static final Duration AFTER = Duration.ofDays(1);

    public Past {
        deeds = List.copyOf(deeds);
        texts = List.copyOf(texts);
        priorities = Map.copyOf(priorities);
    }

    /** As much of it as these sites are concerned. */
    public Past at(Predicate<String> site) {
        return new Past(
                from,
                to,
                deeds.stream().filter(deed -> site.test(deed.key().site())).toList(),
                texts.stream()
                        .filter(text -> text.sites().stream().anyMatch(site))
                        .toList(),
                priorities);
    }

    /** How often an alarm called people in it. */
    public int calls() {
        return Stretch.of(this).size();
    }

    /** What is played: that an alarm began which somebody knew of in that very moment called nobody. */
    List<PastDeed> played() {
        Set<Moment> known = deeds.stream()
                .filter(deed -> deed.what() == PastDeed.What.KNOWN)
                .map(deed -> new Moment(deed.key(), deed.at()))
                .collect(Collectors.toSet());
        return deeds.stream()
                .filter(deed ->
                        deed.what() != PastDeed.What.BEGAN || !known.contains(new Moment(deed.key(), deed.at())))
                .toList();
    }

    private record Moment(AlarmKey key, Instant at) {}

    boolean within(Instant at) {
        return !at.isBefore(from) && at.isBefore(to);
    }
}
