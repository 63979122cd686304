package yardlight.escalation.quiet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Priority;

/**
 * What lies on a contact's desk: the texts of the last hour, and the notices that wait to be sent.
 *
 * @param sent the texts that went out in the last hour, oldest first
 * @param waiting the notices that are held, in the order in which they came
 * @param bundles how many bundles were made so far, for their ids
 * @param flood whether a flood had begun and not ended when it was last looked at
 * @param allsWell when they are told next that all is well
 * @param news what they are told when there is room for it
 */
public record Desk(
        String contact,
        List<Sent> sent,
        List<Waiting> waiting,
        int bundles,
        boolean flood,
        Optional<AllsWellAt> allsWell,
        Tray news) {

    /**
     * A text that went out; {@code open} until somebody answers what it was about.
     *
     * @param callouts the first {@value #MOST} of those it was about, which is enough to tell a flood by
     */
    public record Sent(Instant at, List<String> callouts, boolean open) {

        /** A storm of hundreds is told again and again: its desk must not grow with its square. */
        static final int MOST = 50;

        public Sent {
            callouts = List.copyOf(callouts.subList(0, Math.min(callouts.size(), MOST)));
        }
    }

    public record Waiting(String notice, Instant until) {}

    /**
     * @param due the time on their schedule
     * @param at when it is written; later than that while it cannot be sent
     */
    public record AllsWellAt(Instant due, Instant at) {}

    static final Duration REMEMBERS = Duration.ofHours(1);

    public Desk {
        sent = List.copyOf(sent);
        waiting = List.copyOf(waiting);
    }

    /** A desk of somebody who is not told that all is well. */
    public Desk(String contact, List<Sent> sent, List<Waiting> waiting, int bundles) {
        this(contact, sent, waiting, bundles, false, Optional.empty(), Tray.EMPTY);
    }

    public static Desk empty(String contact) {
        return new Desk(contact, List.of(), List.of(), 0);
    }

    /** The first instant, from {@code now} on, at which one more text may go out. */
    public Instant room(Priority priority, Instant now, Restraint restraint) {
        return room(priority, now, restraint, one -> true);
    }

    /** The same for one more text about a callout: its own texts are paced by its ladder and are not a burst. */
    public Instant roomFor(String callout, Priority priority, Instant now, Restraint restraint) {
        return room(priority, now, restraint, one -> !one.callouts().contains(callout));
    }

    private Instant room(Priority priority, Instant now, Restraint restraint, Predicate<Sent> counts) {
        boolean critical = priority == Priority.CRITICAL;
        List<Instant> all = sent.stream().map(Sent::at).toList();
        List<Instant> open =
                sent.stream().filter(Sent::open).filter(counts).map(Sent::at).toList();
        int burst = critical ? restraint.criticalBurst() : restraint.burst();
        Instant byBurst = room(open, now, burst, restraint.within());
        Instant byHour = critical ? now : room(all, now, restraint.perHour(), REMEMBERS);
        Instant byFlood = inFlood(now, restraint.flood()) ? room(all, now, 1, restraint.pace()) : now;
        return Stream.of(byBurst, byHour, byFlood).max(Instant::compareTo).orElseThrow();
    }

    /**
     * The same for news, the least of all: it needs room beside whatever went out, and in a flood there is none. News that
     * went out take no room from anything else.
     */
    public Instant roomForNews(Instant now, Restraint restraint) {
        List<Instant> all = Stream.concat(sent.stream().map(Sent::at), news.sent().stream())
                .sorted()
                .toList();
        Instant byHour = room(all, now, restraint.perHour(), REMEMBERS);
        Instant byPace = room(news.sent(), now, Restraint.NEWS, Restraint.NEWS_WITHIN);
        Instant byFlood =
                inFlood(now, restraint.flood()) ? now.plus(restraint.flood().window()) : now;
        return Stream.of(byHour, byPace, byFlood).max(Instant::compareTo).orElseThrow();
    }

    /** Whether a text about the callout went out within the last hour, so that they may be awake because of it. */
    public boolean toldOfLate(String callout, Instant now) {
        return sent.stream()
                .filter(one -> one.at().plus(REMEMBERS).isAfter(now))
                .anyMatch(one -> one.callouts().contains(callout));
    }

    /** Whether more is to be told than one can take in one by one: what was told a while ago, and what waits. */
    private boolean inFlood(Instant now, Flood.Numbers numbers) {
        int things = waiting.size()
                + sent.stream()
                        .filter(one -> one.at().plus(numbers.window()).isAfter(now))
                        .mapToInt(one -> one.callouts().size())
                        .sum();
        return things >= (flood ? numbers.endsBelow() : numbers.begins());
    }

    /** The desk with the flood as it stands now. To be asked before and after whatever is put on it. */
    public Desk looked(Instant now, Flood.Numbers numbers) {
        return new Desk(contact, sent, waiting, bundles, inFlood(now, numbers), allsWell, news);
    }

    private static Instant room(List<Instant> times, Instant now, int most, Duration window) {
        List<Instant> counted =
                times.stream().filter(at -> at.plus(window).isAfter(now)).toList();
        return counted.size() < most ? now : counted.get(counted.size() - most).plus(window);
    }

    /** The desk with one more notice that waits; {@code until} is when its time has come. */
    public Desk waits(String notice, Instant until) {
        var more = new ArrayList<>(waiting);
        more.add(new Waiting(notice, until));
        return new Desk(contact, sent, more, bundles, flood, allsWell, news);
    }

    /** The desk after a text about these callouts went out. */
    public Desk sends(Instant now, List<String> callouts) {
        return sends(new Sent(now, callouts, true));
    }

    /** The desk after a text about no callout went out: it counts in the hour, and nobody has to answer it. */
    public Desk sendsAside(Instant now) {
        return sends(new Sent(now, List.of(), false));
    }

    /** The desk after news went out. */
    public Desk sendsNews(Instant now) {
        return with(news.sends(now));
    }

    /** The desk with other news. */
    public Desk with(Tray next) {
        return new Desk(contact, sent, waiting, bundles, flood, allsWell, next);
    }

    private Desk sends(Sent one) {
        var more = new ArrayList<>(sent.stream()
                .filter(other -> other.at().plus(REMEMBERS).isAfter(one.at()))
                .toList());
        more.add(one);
        return new Desk(contact, more, waiting, bundles, flood, allsWell, news);
    }

    /** The desk with another time for the next all's-well, or with none. */
    public Desk tellsNext(Optional<AllsWellAt> next) {
        return new Desk(contact, sent, waiting, bundles, flood, next, news);
    }

    /** The desk once a callout was answered: its texts no longer keep others back. */
    public Desk answered(String callout) {
        return new Desk(
                contact,
                sent.stream()
                        .map(one -> one.callouts().contains(callout) ? new Sent(one.at(), one.callouts(), false) : one)
                        .toList(),
                waiting,
                bundles,
                flood,
                allsWell,
                news);
    }

    /** The desk without these notices: they were sent, bundled or cancelled. */
    public Desk without(Set<String> notices) {
        return new Desk(
                contact,
                sent,
                waiting.stream().filter(one -> !notices.contains(one.notice())).toList(),
                bundles,
                flood,
                allsWell,
                news);
    }

    /** The desk once everything that waits until {@code by} at the latest is due at another instant. */
    public Desk due(Instant by, Instant at) {
        return new Desk(
                contact,
                sent,
                waiting.stream()
                        .map(one -> one.until().isAfter(by) ? one : new Waiting(one.notice(), at))
                        .toList(),
                bundles,
                flood,
                allsWell,
                news);
    }

    public Desk oneMoreBundle() {
        return new Desk(contact, sent, waiting, bundles + 1, flood, allsWell, news);
    }

    /** The notices whose time has come at {@code now}, in the order in which they came. */
    public List<String> ready(Instant now) {
        return waiting.stream()
                .filter(one -> !one.until().isAfter(now))
                .map(Waiting::notice)
                .toList();
    }

    /** When the first waiting notice's time comes; empty when none waits. */
    public Optional<Instant> dueAt() {
        return Stream.concat(waiting.stream().map(Waiting::until), news.dueAt().stream())
                .min(Comparator.naturalOrder());
    }
}
