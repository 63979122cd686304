package yardlight.escalation.coverage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Climb;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.ladder.Reach;
import yardlight.escalation.ladder.Rung;

/**
 * One climb of a ladder on which nobody answers, for an alarm that comes at one instant; and until when an alarm that comes
 * later would be called just so. Whatever was looked up on the way bounds that time, and so does whatever was compared.
 */
final class Walk implements Reach {

    /** Longer than any quiet hours that have an end: who would hear later than this does not hear. */
    static final Duration LONGEST = Duration.ofDays(8);

    private final Timeline timeline;
    private final Ladder ladder;
    private final Priority priority;
    private final Instant alarm;
    private final List<Heard> heard = new ArrayList<>();
    private Instant until;
    private Instant now;
    private Optional<Duration> offset = Optional.of(Duration.ZERO);

    Walk(Timeline timeline, Ladder ladder, Priority priority, Instant alarm, Instant end) {
        this.timeline = timeline;
        this.ladder = ladder;
        this.priority = priority;
        this.alarm = alarm;
        this.now = alarm;
        this.until = end;
    }

    /**
     * What holds from the alarm on.
     *
     * @param proven of several people who hear at the same time, those of whom this is known come first
     */
    Stretch stretch(Set<String> proven) {
        climb();
        Optional<Heard> first = earliest(proven, any -> true);
        Optional<Heard> second =
                first.flatMap(one -> earliest(proven, other -> !other.contact().equals(one.contact())));
        compare();
        return new Stretch(alarm, until, first, second);
    }

    /** Whether anybody is called at once; {@link #until} that ends. */
    boolean called() {
        return !Climb.enter(ladder, Optional.of(Place.FOOT), Map.of(), this, now)
                .people()
                .isEmpty();
    }

    Instant until() {
        return until;
    }

    private Optional<Heard> earliest(Set<String> proven, Predicate<Heard> among) {
        Heard best = null;
        for (Heard one : heard) {
            if (among.test(one)
                    && !one.when(alarm).isAfter(alarm.plus(LONGEST))
                    && (best == null || before(one, best, proven))) {
                best = one;
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean before(Heard one, Heard other, Set<String> proven) {
        int order = one.when(alarm).compareTo(other.when(alarm));
        if (order == 0) {
            order = Boolean.compare(one.after().isPresent(), other.after().isPresent());
        }
        return order < 0 || order == 0 && proven.contains(one.contact()) && !proven.contains(other.contact());
    }

    private void climb() {
        Optional<Place> place = Optional.of(Place.FOOT);
        Map<String, Instant> asleep = Map.of();
        while (!enough()) {
            Climb.Step step = Climb.enter(ladder, place, asleep, this, now);
            asleep.values().forEach(this::passes);
            step.held().forEach((contact, end) -> heard.add(Heard.at(contact, end)));
            if (!step.people().isEmpty()) {
                step.people().forEach(this::told);
                var left = new TreeMap<>(step.held());
                left.keySet().removeAll(step.people());
                left.values().removeIf(end -> !end.isAfter(now));
                asleep = left;
                Duration wait =
                        ladder.rungs().get(step.place().orElseThrow().rung()).delay();
                place = step.place().orElseThrow().next(ladder);
                now = now.plus(wait);
                offset = offset.map(so -> so.plus(wait));
            } else if (step.until().isPresent()) {
                asleep = step.held();
                place = step.place();
                now = step.until().get();
                offset = Optional.empty();
            } else {
                return;
            }
        }
    }

    private void told(String contact) {
        heard.add(offset.map(so -> Heard.after(contact, so)).orElseGet(() -> Heard.at(contact, now)));
    }

    /** Two people have heard by now, or it has gone on for so long that it does not matter any more. */
    private boolean enough() {
        if (now.isAfter(alarm.plus(LONGEST))) {
            if (offset.isEmpty()) {
                bound(now.minus(LONGEST));
            }
            return true;
        }
        String first = null;
        for (Heard one : heard) {
            if (one.when(alarm).isBefore(now)) {
                if (first != null && !first.equals(one.contact())) {
                    return true;
                }
                first = one.contact();
            }
        }
        return false;
    }

    /** Of two times one may move with the alarm and the other not: until they meet, their order stays. */
    private void compare() {
        var fixed = new ArrayList<Instant>();
        var moving = new HashSet<Duration>();
        for (Heard one : heard) {
            one.at().ifPresent(fixed::add);
            one.after().ifPresent(moving::add);
        }
        // Who hears too late for an alarm of now hears in time for a later one.
        moving.add(LONGEST);
        for (Instant end : fixed) {
            moving.forEach(so -> bound(end.minus(so)));
        }
    }

    /** Whether this end of quiet hours was over was asked now. */
    private void passes(Instant end) {
        offset.ifPresent(so -> bound(end.minus(so)));
    }

    private void bound(Instant edge) {
        if (edge.isAfter(alarm) && edge.isBefore(until)) {
            until = edge;
        }
    }

    /** Most rungs call one entry. */
    @Override
    public List<String> people(Rung rung) {
        return rung.call().size() == 1 ? people(rung.call().get(0)) : Reach.super.people(rung);
    }

    @Override
    public List<String> people(String call) {
        return looked(timeline.people(call, now));
    }

    @Override
    public Optional<Instant> heldUntil(String contact) {
        return looked(timeline.sleep(contact, priority, now));
    }

    private <T> T looked(Timeline.Found<T> found) {
        offset.ifPresent(so -> bound(found.until().minus(so)));
        return found.what();
    }
}
