package yardlight.escalation.quiet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The part of a desk that is for news: what calls nobody and can wait. It lies apart from the calls, so that however much
 * there is of it, it neither makes a flood nor takes a call's place.
 *
 * @param waiting the news that wait, in the order in which they came
 * @param sent when news went out in the last hour, oldest first
 */
public record Tray(List<Desk.Waiting> waiting, List<Instant> sent) {

    public static final Tray EMPTY = new Tray(List.of(), List.of());

    /** However many there are, one text tells them; those above so many are not kept one by one. */
    public static final int MOST = 100;

    public Tray {
        waiting = List.copyOf(waiting);
        sent = List.copyOf(sent);
    }

    public boolean full() {
        return waiting.size() >= MOST;
    }

    /** The tray with one more, or with another time for it. */
    public Tray waits(String notice, Instant until) {
        var more = new ArrayList<>(without(Set.of(notice)).waiting());
        more.add(new Desk.Waiting(notice, until));
        return new Tray(more, sent);
    }

    public Tray without(Set<String> notices) {
        return new Tray(
                waiting.stream().filter(one -> !notices.contains(one.notice())).toList(), sent);
    }

    Tray sends(Instant now) {
        var more = new ArrayList<>(
                sent.stream().filter(at -> at.plus(Desk.REMEMBERS).isAfter(now)).toList());
        more.add(now);
        return new Tray(waiting, more);
    }

    /** Whether the time of any of them has come at {@code now}. */
    public boolean ready(Instant now) {
        return dueAt().filter(at -> !at.isAfter(now)).isPresent();
    }

    Optional<Instant> dueAt() {
        return waiting.stream().map(Desk.Waiting::until).min(Comparator.naturalOrder());
    }
}
