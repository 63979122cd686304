package yardlight.escalation.heartbeat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What a silence means: the last words of the box, and the boxes that share its feed, its link or its site as witnesses. */
public final class Inquiry {

    private final Witness silent;
    private final List<Witness> others;
    private final Instant now;
    private final List<Evidence> found = new ArrayList<>();

    /**
     * @param silent the box that is not heard
     * @param others boxes that share its feed, its link or its site, as many as are worth looking at
     */
    public Inquiry(Witness silent, List<Witness> others, Instant now) {
        this.silent = silent;
        this.others = List.copyOf(others);
        this.now = now;
    }

    public Judgement judgement() {
        found.clear();
        lastWords();
        feed();
        paths();
        return Judgement.by(found);
    }

    /**
     * What a box that is back says of the silence that is over; empty when it does not tell its uptime.
     *
     * @param said what it says now
     * @param silentSince when it had been heard last
     */
    public static Optional<Evidence> back(Witness back, Heartbeat said, Instant silentSince, Instant now) {
        return said.uptime().map(uptime -> {
            boolean anew = now.minus(uptime).isAfter(silentSince);
            Clue clue = back.box().battery() ? Clue.RESTARTED_ON_BATTERY : Clue.RESTARTED;
            return new Evidence(anew ? clue : Clue.RAN_ON, now, back.box().id());
        });
    }

    /**
     * The boxes that have gone quiet together with the silent one and share this. Two beats in a row are lost once in 25
     * times on a link that loses a fifth; one is enough when all of several boxes miss it.
     */
    public List<Witness> quiet(Path.Kind kind) {
        List<Witness> sharing = others.stream()
                .filter(other ->
                        other.shares(silent, kind) && other.box().every().isPresent())
                .filter(other -> !other.explained(silent))
                .toList();
        boolean all = sharing.size() > 1 && sharing.stream().allMatch(other -> other.quietWith(silent, now, 1));
        return sharing.stream()
                .filter(other -> all || other.quietWith(silent, now, 2))
                .toList();
    }

    private void lastWords() {
        BoxWatch watch = silent.watch();
        Optional<Boolean> feed = silent.feed();
        boolean battery = silent.box().battery();
        String name = silent.box().feed().orElse("");
        if (feed.isPresent() && !feed.get()) {
            add(Clue.FEED_OFF, name);
        } else if (feed.isPresent() && battery && toldOff().isEmpty()) {
            add(Clue.FEED_ON, name);
        } else if (battery && toldOff().isEmpty()) {
            add(Clue.BATTERY, "");
        }
        if (feed.orElse(true) && watch.habit().batteryFallen(watch.last())) {
            add(Clue.BATTERY_FALLING, number(watch.last().battery()));
        }
        if (watch.habit().signalFallen(watch.last())) {
            add(Clue.SIGNAL_FALLEN, number(watch.last().signal()));
        }
    }

    private void add(Clue clue, String about) {
        found.add(new Evidence(clue, silent.watch().heardAt(), about));
    }

    /** A box at the site that said last that the silent one's feed is off, or one elsewhere that lives on it and says so. */
    private Optional<Witness> toldOff() {
        return others.stream()
                .filter(other -> other.shares(silent, Path.Kind.SITE)
                        ? other.saysOff(silent.box().feed()) && (lives(other) || other.quietWith(silent, now, 1))
                        : other.shares(silent, Path.Kind.FEED) && lives(other) && says(other, false))
                .findFirst();
    }

    /** What living boxes say of the feed by speaking of it, or by living on it alone. */
    private void feed() {
        Predicate<Witness> sharesFeed = other -> other.shares(silent, Path.Kind.FEED);
        toldOff().ifPresent(other -> add(Clue.FEED_OFF_ELSEWHERE, other));
        Predicate<Witness> livesOnIt = sharesFeed.and(other -> lives(other) && (says(other, true) || proves(other)));
        first(livesOnIt.and(other -> other.shares(silent, Path.Kind.SITE)), Clue.FEED_LIVES);
        first(livesOnIt.and(other -> !other.shares(silent, Path.Kind.SITE)), Clue.FEED_LIVES_ELSEWHERE);
    }

    private void paths() {
        Optional<Witness> onLink = others.stream()
                .filter(other -> other.shares(silent, Path.Kind.LINK) && lives(other))
                .findFirst();
        onLink.ifPresent(other -> add(Clue.LINK_LIVES, other));
        List<Witness> linkQuiet = onLink.isPresent() ? List.of() : quiet(Path.Kind.LINK);
        List<Witness> feedQuiet = quiet(Path.Kind.FEED);
        List<Witness> apart =
                linkQuiet.stream().filter(other -> !diesWith(other)).toList();
        List<Witness> dark = feedQuiet.stream()
                .filter(this::diesWith)
                .filter(other -> !linkQuiet.contains(other))
                .toList();
        List<Witness> both = linkQuiet.stream().filter(this::diesWith).toList();
        count(apart, Clue.LINK_QUIET);
        count(dark, Clue.FEED_QUIET);
        count(both, Clue.BOTH_QUIET);
    }

    /** Whether it goes quiet with the same mains: it hangs on the same feed and has no battery to outlive it. */
    private boolean diesWith(Witness other) {
        return other.shares(silent, Path.Kind.FEED) && proves(other);
    }

    /** Whether it lives no longer than its feed. */
    private static boolean proves(Witness other) {
        return !other.box().battery();
    }

    private boolean lives(Witness other) {
        return other.livesAfter(silent, now);
    }

    private static boolean says(Witness other, boolean on) {
        return other.feed().filter(said -> said == on).isPresent();
    }

    private void first(Predicate<Witness> which, Clue clue) {
        others.stream().filter(which).findFirst().ifPresent(other -> add(clue, other));
    }

    private void add(Clue clue, Witness other) {
        found.add(new Evidence(clue, other.watch().heardAt(), other.box().id()));
    }

    private void count(List<Witness> quiet, Clue clue) {
        if (!quiet.isEmpty()) {
            String boxes = quiet.size() == 1 ? "1 box" : quiet.size() + " boxes";
            found.add(new Evidence(clue, now, boxes));
        }
    }

    private static String number(Optional<Double> value) {
        return value.map(Inquiry::tenths).orElse("");
    }

    private static String tenths(double value) {
        long tenths = Math.round(value * 10);
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : Double.toString(tenths / 10.0);
    }
}
