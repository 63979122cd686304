package yardlight.demo.study;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import yardlight.demo.lease.Fault;
import yardlight.demo.lease.LeaseDesign;

/**
 * A fault at a lease that had run well for a while: what was heard of it, and what came of it as nobody did anything.
 *
 * @param heard the texts since it began, in order, their times counted from then
 * @param calls every text that called somebody until twelve hours after the first one, their times counted from then
 * @param alarms how many alarms began in that time
 * @param tripped when the plain switch at the top of the tank tripped, from then
 * @param overflowed when the water tank ran over, from then
 */
record Trial(
        Fault fault,
        long seed,
        List<Heard> heard,
        List<Duration> calls,
        int alarms,
        Optional<Duration> tripped,
        Optional<Duration> overflowed) {

    /** The rules know a pump by its earlier days, and a pressure by its own falls. */
    private static final Duration BEFORE = Duration.ofDays(10);

    private static final Duration AFTER = Duration.ofDays(10);

    /** Later than this a slow fault is looked at every five minutes, and a quick one was. */
    private static final Duration CLOSELY = Duration.ofDays(2);

    /** What comes later than this after the first text is not of interest: somebody is there. */
    private static final Duration THERE = Duration.ofHours(12);

    private static final int DAY = 1_440;

    /** A lease drawn by the seed, that the rules have got to know. */
    static WatchedLease known(long seed) {
        var watched = new WatchedLease(LeaseDesign.drawn(seed), seed);
        watched.step(BEFORE);
        return watched;
    }

    /** The time of day at which it begins is drawn by the seed too. */
    static Trial of(Fault fault, long seed, WatchedLease known) {
        WatchedLease watched = known.again();
        watched.step(WatchedLease.MINUTE.multipliedBy(new Random(seed * 31 + fault.ordinal()).nextInt(DAY)));
        Duration begin = watched.lease().passed();
        watched.lease().begin(fault);
        Optional<Duration> tripped = Optional.empty();
        Optional<Duration> overflowed = Optional.empty();
        Duration since = Duration.ZERO;
        while (overflowed.isEmpty() && since.compareTo(AFTER) < 0) {
            step(watched, begin, since);
            since = watched.lease().passed().minus(begin);
            if (tripped.isEmpty() && watched.lease().highSwitch()) {
                tripped = Optional.of(since);
            }
            if (watched.lease().ledger().overflowed() > 0) {
                overflowed = Optional.of(since);
            }
        }
        List<Heard> heard = watched.heard().stream()
                .filter(one -> one.at().compareTo(begin) > 0)
                .map(one -> new Heard(one.at().minus(begin), one.alarms(), one.words()))
                .toList();
        return new Trial(
                fault,
                seed,
                heard,
                since(watched.calls(), begin),
                since(watched.begun(), begin).size(),
                tripped,
                overflowed);
    }

    private static List<Duration> since(List<Duration> times, Duration begin) {
        return times.stream()
                .filter(at -> at.compareTo(begin) > 0)
                .map(at -> at.minus(begin))
                .toList();
    }

    private static void step(WatchedLease watched, Duration begin, Duration since) {
        boolean there = watched.heard().stream()
                .filter(one -> one.at().compareTo(begin) > 0)
                .anyMatch(one -> one.at().plus(THERE).compareTo(begin.plus(since)) < 0);
        if (there) {
            watched.lease().step(WatchedLease.MINUTE);
            return;
        }
        if (since.equals(CLOSELY)) {
            watched.post(Duration.ofMinutes(5));
        }
        watched.step();
    }

    /** How long after it began the first text came. */
    Optional<Duration> detected() {
        return heard.stream().findFirst().map(Heard::at);
    }

    /** How many texts there were until the first of them was answered. */
    long untilAnswered() {
        return detected().stream()
                .flatMap(first -> calls.stream().filter(at -> at.compareTo(first.plus(WatchedLease.ANSWERS)) <= 0))
                .count();
    }

    /** How long before the tank ran over the first text came. */
    Optional<Duration> left() {
        return detected().flatMap(at -> overflowed.map(over -> over.minus(at)));
    }

    /** How long before the tank ran over the plain switch tripped. */
    Optional<Duration> leftBySwitch() {
        return tripped.flatMap(at -> overflowed.map(over -> over.minus(at)));
    }
}
