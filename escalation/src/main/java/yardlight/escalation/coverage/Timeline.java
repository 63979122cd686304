package yardlight.escalation.coverage;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/**
 * Who is behind an entry of a ladder and who sleeps, from one instant to another, worked out once and then looked up. Not
 * for use by several threads.
 */
final class Timeline {

    /** What holds from the instant with the same index on, until the next one. */
    private record Steps<T>(Instant[] from, List<T> what) {

        static <T> Steps<T> of(Instant from, Instant to, Stream<Instant> changes, Function<Instant, T> at) {
            Instant[] edges = Stream.concat(Stream.of(from), changes)
                    .filter(change -> !change.isBefore(from) && change.isBefore(to))
                    .sorted()
                    .distinct()
                    .toArray(Instant[]::new);
            return new Steps<>(edges, Arrays.stream(edges).map(at).toList());
        }

        int index(Instant now) {
            int found = Arrays.binarySearch(from, now);
            return found >= 0 ? found : -found - 2;
        }
    }

    private record Sleep(String contact, Priority priority) {}

    /** What was found, and until when it holds. */
    record Found<T>(T what, Instant until) {}

    private final Setup setup;
    private final Set<AlarmKey> stops;
    private final Instant from;
    private final Instant to;
    private final Map<String, Steps<List<String>>> people = new HashMap<>();
    private final Map<Sleep, Steps<Optional<Instant>>> sleep = new HashMap<>();
    private final Map<String, Boolean> reachable = new HashMap<>();

    /** @param to no later instant is asked for */
    Timeline(Setup setup, Set<AlarmKey> stops, Instant from, Instant to) {
        this.setup = setup;
        this.stops = stops;
        this.from = from;
        this.to = to;
    }

    /** The contacts behind an entry of a rung, of those who have a line that may be used. */
    Found<List<String>> people(String call, Instant now) {
        Steps<List<String>> steps = people.computeIfAbsent(call, this::behind);
        return at(steps, now);
    }

    /** Until when the contact is not disturbed; empty when they may be. */
    Found<Optional<Instant>> sleep(String contact, Priority priority, Instant now) {
        return at(sleep.computeIfAbsent(new Sleep(contact, priority), this::asleep), now);
    }

    private <T> Found<T> at(Steps<T> steps, Instant now) {
        int index = steps.index(now);
        Instant until = index + 1 < steps.from().length ? steps.from()[index + 1] : to;
        return new Found<>(steps.what().get(index), until);
    }

    private Steps<List<String>> behind(String call) {
        return Steps.of(
                from,
                to,
                handovers(call, 0),
                now -> setup.peopleBehind(call, now).stream()
                        .filter(this::hasLine)
                        .toList());
    }

    /** A roster may name another one, and that one the next; setups with circles are refused, and cut off here. */
    private Stream<Instant> handovers(String call, int depth) {
        Roster roster = call.startsWith(Rung.ROSTER) ? setup.rosters().get(call.substring(Rung.ROSTER.length())) : null;
        if (roster == null || depth > setup.rosters().size()) {
            return Stream.empty();
        }
        Stream<String> named = Stream.concat(
                        roster.order().stream(), roster.reliefs().stream().map(relief -> relief.contact()))
                .distinct();
        return Stream.concat(roster.changes(from, to), named.flatMap(next -> handovers(next, depth + 1)));
    }

    private boolean hasLine(String contact) {
        return reachable.computeIfAbsent(contact, id -> {
            Contact known = setup.contacts().get(id);
            return known != null && !known.lines().isEmpty() && !Stop.everywhere(known, stops);
        });
    }

    private Steps<Optional<Instant>> asleep(Sleep one) {
        Contact contact = setup.contacts().get(one.contact());
        if (contact == null || one.priority() == Priority.CRITICAL) {
            return Steps.of(from, to, Stream.empty(), now -> Optional.empty());
        }
        Stream<Instant> changes = contact.quiet().stream()
                .filter(hours -> !one.priority().atLeast(hours.lets()))
                .flatMap(hours -> hours.changes(from, to));
        return Steps.of(from, to, changes, now -> contact.heldUntil(one.priority(), now));
    }
}
