package yardlight.escalation.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;

/**
 * An alarm that called people, until one of them did something about it.
 *
 * @param since from when on it called
 * @param until when it began to call anew, although nobody had done anything; empty when it did not
 * @param deed the answer, or that it was shelved
 * @param told of who did that: when they were first texted about the site since then and before they did; empty when
 *     nobody had texted them
 * @param first when anybody was texted about the site since then, and before somebody did something
 */
record Stretch(
        AlarmKey key,
        String alarm,
        Priority priority,
        Instant since,
        Optional<Instant> until,
        Optional<PastDeed> deed,
        Optional<Instant> told,
        Optional<Instant> first) {

    /** An alarm that is back unanswered within this time still calls for the same thing. Ours. */
    static final Duration SAME = Duration.ofHours(1);

    /** How long after they were texted they did it; empty when nobody had texted them. */
    Optional<Duration> after() {
        return told.flatMap(at -> deed.map(done -> Duration.between(at, done.at())));
    }

    private Stretch with(Optional<PastDeed> done, Optional<Instant> whenTold, Optional<Instant> whenFirst) {
        return new Stretch(key, alarm, priority, since, until, done, whenTold, whenFirst);
    }

    private Stretch replacedAt(Instant at) {
        return new Stretch(key, alarm, priority, since, Optional.of(at), deed, told, first);
    }

    /** Those that began within the time, in the order in which they did. */
    static List<Stretch> of(Past past) {
        var texts = new Texts(past.texts());
        return new Walk(past).walk().stream().map(texts::tell).toList();
    }

    /** Goes through what happened and keeps what is open. */
    private static final class Walk {

        private final Past past;
        private final List<Stretch> found = new ArrayList<>();
        private final Map<AlarmKey, Integer> open = new HashMap<>();
        private final Map<AlarmKey, Instant> ended = new HashMap<>();

        Walk(Past past) {
            this.past = past;
        }

        List<Stretch> walk() {
            past.played().forEach(this::take);
            return found;
        }

        private void take(PastDeed deed) {
            switch (deed.what()) {
                case BEGAN -> began(deed);
                case ENDED -> ended.put(deed.key(), deed.at());
                case ANSWERED, ANSWERED_WITH, SHELVED -> done(deed);
                case KNOWN -> open.remove(deed.key());
                case UNSHELVED, RESET -> {}
            }
        }

        private void began(PastDeed deed) {
            boolean same = open.containsKey(deed.key())
                    && Optional.ofNullable(ended.get(deed.key()))
                            .filter(at -> at.plus(SAME).isBefore(deed.at()))
                            .isEmpty();
            ended.remove(deed.key());
            if (!same) {
                Optional.ofNullable(open.remove(deed.key()))
                        .ifPresent(place -> found.set(place, found.get(place).replacedAt(deed.at())));
            }
            if (!same && past.within(deed.at())) {
                open.put(deed.key(), found.size());
                found.add(begun(deed));
            }
        }

        private Stretch begun(PastDeed deed) {
            return new Stretch(
                    deed.key(),
                    deed.alarm(),
                    past.priorities().getOrDefault(deed.alarm(), Priority.MEDIUM),
                    deed.at(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }

        private void done(PastDeed deed) {
            Integer place = open.remove(deed.key());
            if (place != null) {
                Stretch one = found.get(place);
                found.set(place, one.with(Optional.of(deed), Optional.empty(), Optional.empty()));
            }
        }
    }

    /** When whom was texted about which site. */
    private static final class Texts {

        private record Whom(String contact, String site) {}

        private static final String ANYBODY = "";

        private final Map<Whom, TreeSet<Instant>> texts = new HashMap<>();

        Texts(List<PastText> all) {
            all.forEach(text -> text.sites().forEach(site -> {
                add(new Whom(text.contact(), site), text.at());
                add(new Whom(ANYBODY, site), text.at());
            }));
        }

        private void add(Whom whom, Instant at) {
            texts.computeIfAbsent(whom, any -> new TreeSet<>()).add(at);
        }

        Stretch tell(Stretch one) {
            return one.with(one.deed, one.deed.flatMap(deed -> first(one, deed.by())), first(one, ANYBODY));
        }

        private Optional<Instant> first(Stretch one, String contact) {
            TreeSet<Instant> times = texts.getOrDefault(new Whom(contact, one.key.site()), new TreeSet<>());
            return Optional.ofNullable(times.ceiling(one.since))
                    .filter(at -> one.until.filter(end -> !end.isAfter(at)).isEmpty())
                    .filter(at ->
                            one.deed.filter(deed -> !deed.at().isAfter(at)).isEmpty());
        }
    }
}
