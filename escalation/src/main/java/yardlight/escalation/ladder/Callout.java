package yardlight.escalation.ladder;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;

/**
 * One climb of a ladder for one alarm, or for several alarms of one cause. It always has either a time at which it goes
 * on or a recorded end.
 */
public sealed interface Callout {

    /** By start; the id decides between callouts that started together. */
    Comparator<Callout> OLDEST_FIRST = Comparator.comparing(
                    (Callout callout) -> callout.facts().startedAt())
            .thenComparing(Callout::id);

    /** The words of the outside contract. */
    enum Kind {
        CALLING,
        HELD,
        ANSWERED,
        ENDED,
        EXHAUSTED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * What every callout has, whatever its kind.
     *
     * @param code the short number that a person answers with
     * @param priority that of its most urgent alarm
     * @param notices how many notices were made for it so far
     * @param announced how many of its alarms the newest text knew of; none when it said that it is over
     * @param told contacts who were called, or whose notice is on its way
     * @param held contacts whose notice waits for the end of their quiet hours, and when that is
     */
    record Facts(
            String id,
            int code,
            String site,
            String ladder,
            Priority priority,
            List<AlarmKey> alarms,
            Instant startedAt,
            int notices,
            int announced,
            Set<String> told,
            Map<String, Instant> held) {

        public Facts {
            alarms = List.copyOf(alarms);
            // Sorted, so that the same night gives the same record every time it is played.
            told = java.util.Collections.unmodifiableSet(new TreeSet<>(told));
            held = java.util.Collections.unmodifiableMap(new TreeMap<>(held));
        }

        public Facts withPriority(Priority next) {
            return new Facts(id, code, site, ladder, next, alarms, startedAt, notices, announced, told, held);
        }

        public Facts withAlarms(List<AlarmKey> next) {
            return new Facts(id, code, site, ladder, priority, next, startedAt, notices, announced, told, held);
        }

        /**
         * The callout once a text knows of all its alarms.
         *
         * @param holds whether any of them holds; else what people read in it is that it is over
         */
        public Facts announcing(boolean holds) {
            int known = holds ? alarms.size() : 0;
            return new Facts(id, code, site, ladder, priority, alarms, startedAt, notices, known, told, held);
        }

        public Facts withOneMoreNotice() {
            return new Facts(id, code, site, ladder, priority, alarms, startedAt, notices + 1, announced, told, held);
        }

        public Facts withReached(Set<String> nowTold, Map<String, Instant> nowHeld) {
            return new Facts(id, code, site, ladder, priority, alarms, startedAt, notices, announced, nowTold, nowHeld);
        }
    }

    /** Somebody was called; the next call is due at {@code nextAt} unless they answer. */
    record Calling(Facts facts, Place place, Instant nextAt) implements Callout {
        @Override
        public Kind kind() {
            return Kind.CALLING;
        }
    }

    /** Everybody who is left to call has quiet hours; it goes on from {@code place} at {@code until}. */
    record Held(Facts facts, Place place, Instant until) implements Callout {
        @Override
        public Kind kind() {
            return Kind.HELD;
        }
    }

    record Answered(Facts facts, Place place, String by, Instant at) implements Callout {
        @Override
        public Kind kind() {
            return Kind.ANSWERED;
        }
    }

    /**
     * Over without an answer: the alarm returned, was shelved, joined another callout.
     *
     * @param wasDue when the next call would have been due, had it not ended; empty when nobody had been called
     */
    record Ended(Facts facts, Place place, Optional<Instant> wasDue, String reason, Instant at) implements Callout {
        @Override
        public Kind kind() {
            return Kind.ENDED;
        }
    }

    /** The whole ladder was climbed and nobody answered. */
    record Exhausted(Facts facts, Place place, Instant at) implements Callout {
        @Override
        public Kind kind() {
            return Kind.EXHAUSTED;
        }
    }

    Facts facts();

    /** The place that was called last, or from which it goes on. */
    Place place();

    /** The same callout, at the same place, with other facts. */
    default Callout with(Facts next) {
        return switch (kind()) {
            case CALLING -> new Calling(next, place(), ((Calling) this).nextAt());
            case HELD -> new Held(next, place(), ((Held) this).until());
            case ANSWERED -> new Answered(next, place(), ((Answered) this).by(), ((Answered) this).at());
            case ENDED -> {
                Ended was = (Ended) this;
                yield new Ended(next, place(), was.wasDue(), was.reason(), was.at());
            }
            case EXHAUSTED -> new Exhausted(next, place(), ((Exhausted) this).at());
        };
    }

    Kind kind();

    default String id() {
        return facts().id();
    }

    /** When it goes on by itself; empty when it is over. */
    default Optional<Instant> dueAt() {
        return switch (kind()) {
            case CALLING -> Optional.of(((Calling) this).nextAt());
            case HELD -> Optional.of(((Held) this).until());
            case ANSWERED, ENDED, EXHAUSTED -> Optional.empty();
        };
    }

    default boolean live() {
        return dueAt().isPresent();
    }
}
