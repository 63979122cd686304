package yardlight.escalation.ladder;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a callout moves up its ladder. A rung on which everybody has quiet hours is passed without waiting, since nobody
 * was told, and its people hear of it when they wake. When that leaves nobody at all, the callout is held until the
 * first quiet hours end and goes on from where it was; then only the rung that is first has its notices waiting.
 */
public final class Climb {

    /**
     * What to do next. Exactly one of: call {@code people} or ask the site or both, wait until {@code until}, or neither: the
     * ladder is exhausted.
     */
    public record Step(
            Optional<Place> place,
            List<String> people,
            Map<String, Instant> held,
            Optional<Instant> until,
            boolean asks) {

        public Step {
            people = List.copyOf(people);
            held = java.util.Collections.unmodifiableMap(new TreeMap<>(held));
        }

        public boolean exhausted() {
            return place.isEmpty();
        }
    }

    private Climb() {}

    /**
     * Enters the ladder at a place, or somewhere above it.
     *
     * @param from the first place to try; empty after the last one
     * @param waiting contacts whose notice waits already, and until when
     */
    public static Step enter(
            Ladder ladder, Optional<Place> from, Map<String, Instant> waiting, Reach reach, Instant now) {
        var asleep = new TreeMap<>(waiting);
        Map<String, Instant> first = waiting;
        Optional<Place> place = from;
        while (place.isPresent()) {
            Place here = place.get();
            if (here.rung() < ladder.rungs().size()) {
                Rung rung = ladder.rungs().get(here.rung());
                List<String> free = free(reach.people(rung), asleep, reach);
                boolean asks = rung.asks() && reach.mayAsk();
                if (!free.isEmpty() || asks) {
                    return new Step(place, free, asleep, Optional.of(now.plus(rung.delay())), asks);
                }
                first = first.equals(waiting) ? Map.copyOf(asleep) : first;
            }
            place = here.nextRung(ladder);
        }
        Optional<Instant> until = asleep.values().stream().filter(now::isBefore).min(Instant::compareTo);
        Place resume = from.orElse(new Place(ladder.again(), 0, 0));
        return new Step(until.map(any -> resume), List.of(), first, until, false);
    }

    private static List<String> free(List<String> people, Map<String, Instant> asleep, Reach reach) {
        List<String> free = new ArrayList<>();
        for (String contact : people) {
            reach.heldUntil(contact).ifPresentOrElse(until -> asleep.put(contact, until), () -> free.add(contact));
        }
        return free;
    }
}
