package yardlight.gateway.watch;

import java.time.Duration;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One turn: if this gateway does its work, the other one is told so. If it does not, nothing is said, and the other one calls
 * somebody once the box's deadline is over. What keeps the other one from hearing is said in the log once, and once more when
 * it is over.
 */
final class Round {

    static final Duration SHORTEST = Duration.ofSeconds(1);
    static final Duration LONGEST = Duration.ofHours(1);

    /** Trouble is looked at again sooner, so that one lost heartbeat is made good within the deadline. */
    private static final int SOONER = 4;

    private static final Duration LATEST_AGAIN = Duration.ofMinutes(1);

    private static final Logger LOG = LoggerFactory.getLogger(Round.class);

    private enum Standing {
        NOTHING_YET,
        HEARD,
        NOT_HEARD,
        NOT_WELL
    }

    private final Vital wellbeing;
    private final Other other;
    private final String name;
    private Duration every;
    private Standing standing = Standing.NOTHING_YET;

    /**
     * @param name of the other gateway, for the log
     * @param every from one turn to the next, until the other one says what it expects
     */
    Round(Vital wellbeing, Other other, String name, Duration every) {
        this.wellbeing = wellbeing;
        this.other = other;
        this.name = name;
        this.every = every;
    }

    /**
     * @param uptime of this gateway
     * @return after which time the next turn is
     */
    Duration go(Duration uptime) {
        Optional<String> unwell = wellbeing.trouble();
        if (unwell.isPresent()) {
            warn(Standing.NOT_WELL, "{} is not told that all is well here: {}", unwell.get());
            return soon();
        }
        Other.Told told = other.tell(uptime);
        if (told.trouble().isPresent()) {
            warn(
                    Standing.NOT_HEARD,
                    "{} does not hear that all is well here: {}",
                    told.trouble().get());
            return soon();
        }
        every = told.next().map(Round::bounded).orElse(every);
        if (standing != Standing.HEARD) {
            LOG.info("{} hears that all is well here; it expects to every {}", name, every);
        }
        standing = Standing.HEARD;
        return every;
    }

    private void warn(Standing now, String sentence, String why) {
        if (standing != now) {
            LOG.warn(sentence, name, why);
        }
        standing = now;
    }

    private Duration soon() {
        Duration sooner = bounded(every.dividedBy(SOONER));
        return sooner.compareTo(LATEST_AGAIN) > 0 ? LATEST_AGAIN : sooner;
    }

    private static Duration bounded(Duration length) {
        if (length.compareTo(SHORTEST) < 0) {
            return SHORTEST;
        }
        return length.compareTo(LONGEST) > 0 ? LONGEST : length;
    }
}
