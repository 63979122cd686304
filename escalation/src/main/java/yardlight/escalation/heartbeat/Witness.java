package yardlight.escalation.heartbeat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.setup.Box;

/**
 * A box as it is set up and as it was heard.
 *
 * @param open since when it could have been heard: what it did not say before that, it has not missed
 */
public record Witness(Box box, BoxWatch watch, Instant open) {

    /** A beat is on its way for a while, at most so long and at most a sixth of the time from one to the next. */
    private static final Duration SLACK = Duration.ofSeconds(10);

    private static final int PART = 6;

    /** Two are quiet at the same time when the one can have begun within this time of the other. */
    private static final Duration TOGETHER = Duration.ofMinutes(2);

    /** A box that could be heard all the time. */
    public Witness(Box box, BoxWatch watch) {
        this(box, watch, Instant.EPOCH);
    }

    boolean shares(Witness other, Path.Kind kind) {
        return switch (kind) {
            case SITE -> box.site().equals(other.box.site());
            case FEED -> box.feed().isPresent() && box.feed().equals(other.box.feed());
            case LINK -> box.link().isPresent() && box.link().equals(other.box.link());
        };
    }

    /** Whether it was heard after the silent box should have been, and has missed no beat since. */
    boolean livesAfter(Witness silent, Instant now) {
        boolean overdue = box.every().isPresent() && missed(now) > 0;
        return !watch.silent()
                && !overdue
                && watch.heardAt().isAfter(silent.latestBegin().plus(silent.slack()));
    }

    /**
     * Whether it has gone quiet, and may have done so together with the silent one.
     *
     * @param beats how many it has to have missed
     */
    boolean quietWith(Witness silent, Instant now, int beats) {
        if (box.every().isEmpty() || !watch.silent() && missed(now) < beats) {
            return false;
        }
        boolean tooEarly = latestBegin().plus(TOGETHER).isBefore(silent.watch.heardAt());
        boolean tooLate = watch.heardAt().isAfter(silent.latestBegin().plus(TOGETHER));
        return !tooEarly && !tooLate;
    }

    /** What the box says of the feed that it hangs on; of all of them when nobody has set up which that is. */
    Optional<Boolean> feed() {
        if (box.feed().isPresent()) {
            return Optional.ofNullable(watch.last().feeds().get(box.feed().get()));
        }
        return watch.last().feeds().isEmpty()
                ? Optional.empty()
                : Optional.of(!watch.last().feeds().containsValue(false));
    }

    /** Whether its last word is that this feed is off, its own or another one that it tells. */
    boolean saysOff(Optional<String> feed) {
        return feed.map(watch.last().feeds()::get).filter(on -> !on).isPresent();
    }

    /** Whether its silence is that of a link which the other does not use: then it says nothing of feeds. */
    boolean explained(Witness other) {
        return watch.silent()
                && watch.absence()
                        .filter(path -> path.kind() == Path.Kind.LINK)
                        .filter(path -> !other.box.link().equals(Optional.of(path.name())))
                        .isPresent();
    }

    /** The silence began at the latest when the next beat was due. */
    private Instant latestBegin() {
        return watch.heardAt().plus(box.every().orElse(Duration.ZERO));
    }

    private long missed(Instant now) {
        Instant since = open.isAfter(watch.heardAt()) ? open : watch.heardAt();
        Duration quiet = Duration.between(since, now).minus(slack());
        return quiet.isNegative() ? 0 : quiet.dividedBy(box.every().orElseThrow());
    }

    private Duration slack() {
        Duration part = box.every().orElse(Duration.ZERO).dividedBy(PART);
        return part.compareTo(SLACK) < 0 ? part : SLACK;
    }
}
