package yardlight.escalation.heartbeat;

import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import yardlight.escalation.alarm.AlarmKey;

/**
 * A silence with one cause: the boxes in it, and what it was and is taken for.
 *
 * @param alarm id of the occurrence of the alarm
 * @param key the alarm
 * @param path where it is found again: the site, feed or link that it was the silence of at first
 * @param shared what its boxes have in common by now
 * @param since when the first of them was last heard
 * @param foundAt when that was found
 * @param members every box that belonged to it, by id
 * @param told the verdict with which people were called
 * @param judgement what is known of it by now
 * @param endedAt when the last box was back
 */
public record Absence(
        String alarm,
        AlarmKey key,
        Path path,
        Path shared,
        Instant since,
        Instant foundAt,
        SortedMap<String, Member> members,
        Verdict told,
        Judgement judgement,
        Optional<Instant> endedAt) {

    /** So many boxes are named in it; more belong to it all the same. */
    public static final int MOST = 5_000;

    /**
     * A box in it.
     *
     * @param since when it was last heard
     * @param back when it was heard again
     */
    public record Member(Instant since, Optional<Instant> back) {}

    public Absence {
        members = Collections.unmodifiableSortedMap(new TreeMap<>(members));
    }

    public boolean open() {
        return endedAt.isEmpty();
    }

    /** The verdict as it is by now. */
    public Verdict verdict() {
        return judgement.verdict();
    }

    /** Whether one more box can be named in it. */
    public boolean takes(String box) {
        return members.containsKey(box) || members.size() < MOST;
    }

    /** When a box joined last; the first one when it was found. */
    public Instant newest() {
        return members.values().stream()
                .map(Member::since)
                .max(Instant::compareTo)
                .orElse(since);
    }

    /** With one more box. */
    public Absence joined(String box, Instant heardAt) {
        Instant first = heardAt.isBefore(since) ? heardAt : since;
        return new Absence(
                alarm,
                key,
                path,
                shared,
                first,
                foundAt,
                with(box, new Member(heardAt, Optional.empty())),
                told,
                judgement,
                endedAt);
    }

    /** A box is back; it ends with the last one. */
    public Absence back(String box, Instant now) {
        SortedMap<String, Member> after = with(box, new Member(members.get(box).since(), Optional.of(now)));
        boolean over = after.values().stream().allMatch(member -> member.back().isPresent());
        return new Absence(
                alarm,
                key,
                path,
                shared,
                since,
                foundAt,
                after,
                told,
                judgement,
                over ? Optional.of(now) : Optional.empty());
    }

    /** It ends although boxes in it are silent still. */
    public Absence ended(Instant now) {
        var after = new TreeMap<>(members);
        after.replaceAll(
                (box, member) -> new Member(member.since(), member.back().or(() -> Optional.of(now))));
        return new Absence(alarm, key, path, shared, since, foundAt, after, told, judgement, Optional.of(now));
    }

    /** The same, taken for something else by what has been found since. */
    public Absence judged(Judgement by) {
        return new Absence(alarm, key, path, shared, since, foundAt, members, told, by, endedAt);
    }

    /** The same, found to be of a path that more boxes share. */
    public Absence over(Path wider) {
        return new Absence(alarm, key, path, wider, since, foundAt, members, told, judgement, endedAt);
    }

    private SortedMap<String, Member> with(String box, Member member) {
        var all = new TreeMap<>(members);
        all.put(box, member);
        return all;
    }
}
