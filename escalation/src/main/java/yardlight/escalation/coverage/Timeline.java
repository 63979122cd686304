package yardlight.escalation.coverage;

import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/**
 * Who is behind an entry of a ladder and who sleeps, from one instant to another, worked out once and then looked up. Not
 * for use by several threads.
 */
final class Timeline {

    /** What was found, and until when it holds. */
    record Found<T>(T what, Instant until) {}

    /** What holds from the instant with the same index on, until the next one. */
    private static final class Steps<T> {

        private final Instant[] from;
        private final List<Found<T>> found;

        /** Whoever asks goes ahead in small steps and comes back: the answer is mostly here or next to it. */
        private int last;

        private Steps(Instant from, Instant to, Stream<Instant> changes, BiFunction<Instant, Instant, T> at) {
            this.from = Stream.concat(Stream.of(from), changes)
                    .filter(change -> !change.isBefore(from) && change.isBefore(to))
                    .sorted()
                    .distinct()
                    .toArray(Instant[]::new);
            Instant[] edges = this.from;
            this.found = IntStream.range(0, edges.length)
                    .mapToObj(i -> found(edges[i], i + 1 < edges.length ? edges[i + 1] : to, at))
                    .toList();
        }

        private static <T> Found<T> found(Instant from, Instant until, BiFunction<Instant, Instant, T> at) {
            return new Found<>(at.apply(from, until), until);
        }

        Found<T> at(Instant now) {
            if (!holds(last, now)) {
                last = last + 1 < from.length && holds(last + 1, now) ? last + 1 : search(now);
            }
            return found.get(last);
        }

        private boolean holds(int index, Instant now) {
            return !now.isBefore(from[index]) && now.isBefore(found.get(index).until());
        }

        private int search(Instant now) {
            int place = Arrays.binarySearch(from, now);
            return place >= 0 ? place : -place - 2;
        }
    }

    /** To make a step is worth about so many looks. */
    private static final int MAKING = 100;

    private final Setup setup;
    private final Set<AlarmKey> stops;
    private final Instant from;
    private final Instant to;
    private final Set<Priority> lets;
    private final Map<String, Steps<List<String>>> people = new HashMap<>();
    private final Map<Priority, Map<String, Steps<Optional<Instant>>>> sleep = new EnumMap<>(Priority.class);
    private final Map<String, Boolean> reachable = new HashMap<>();
    private long left;

    /**
     * @param to no later instant is asked for
     * @param most how often it is looked at before it is {@link TooMuch}
     */
    Timeline(Setup setup, Set<AlarmKey> stops, Instant from, Instant to, long most) {
        this.left = most;
        this.setup = setup;
        this.stops = stops;
        this.from = from;
        this.to = to;
        this.lets = setup.contacts().values().stream()
                .flatMap(contact -> contact.quiet().stream())
                .map(QuietHours::lets)
                .collect(Collectors.toSet());
    }

    /** The lowest priority that nobody's quiet hours tell from this one. */
    Priority lowestLike(Priority priority) {
        Priority like = priority;
        while (like.ordinal() > 0 && !lets.contains(like)) {
            like = Priority.values()[like.ordinal() - 1];
        }
        return like;
    }

    /** The contacts behind an entry of a rung, of those who have a line that may be used. */
    Found<List<String>> people(String call, Instant now) {
        spend(1);
        Steps<List<String>> known = people.get(call);
        if (known == null) {
            known = behind(call);
            people.put(call, known);
            spend((long) MAKING * known.from.length);
        }
        return known.at(now);
    }

    /** Until when the contact is not disturbed; empty when they may be. */
    Found<Optional<Instant>> sleep(String contact, Priority priority, Instant now) {
        spend(1);
        Map<String, Steps<Optional<Instant>>> sleepers = sleep.computeIfAbsent(priority, any -> new HashMap<>());
        Steps<Optional<Instant>> known = sleepers.get(contact);
        if (known == null) {
            known = asleep(contact, priority);
            sleepers.put(contact, known);
            spend((long) MAKING * known.from.length);
        }
        return known.at(now);
    }

    private void spend(long looks) {
        left -= looks;
        if (left < 0) {
            throw new TooMuch();
        }
    }

    private Steps<List<String>> behind(String call) {
        return new Steps<>(
                from,
                to,
                handovers(call, 0),
                (now, until) -> setup.peopleBehind(call, now).stream()
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

    boolean hasLine(String contact) {
        return reachable.computeIfAbsent(contact, id -> {
            Contact known = setup.contacts().get(id);
            return known != null && !known.lines().isEmpty() && !Stop.everywhere(known, stops);
        });
    }

    private Steps<Optional<Instant>> asleep(String one, Priority priority) {
        Contact contact = setup.contacts().get(one);
        if (contact == null || priority == Priority.CRITICAL) {
            return new Steps<>(from, to, Stream.empty(), (now, until) -> Optional.empty());
        }
        Stream<Instant> changes = contact.quiet().stream()
                .filter(hours -> !priority.atLeast(hours.lets()))
                .flatMap(hours -> hours.changes(from, to));
        // Asked at the last moment of a step it would look eight days ahead from there.
        return new Steps<>(
                from, to, changes, (now, until) -> contact.heldUntil(priority, now, until.plus(Walk.LONGEST)));
    }
}
