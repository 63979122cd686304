package yardlight.escalation.wording;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.setup.Site;

/**
 * How everything stands at one moment, as far as one person wants to know it every day.
 *
 * @param watched how many sites are expected to send heartbeats
 * @param silent those of them that do not
 * @param unwatched how many sites send none anyway
 * @param alarms what is not normal, the worst first
 * @param aside how many alarms are kept from people
 * @param uncovered when nobody would be called; empty when somebody always is
 */
public record Wellbeing(
        int watched,
        List<Site> silent,
        int unwatched,
        List<Subject> alarms,
        int aside,
        Proof proof,
        Moment moment,
        Optional<Uncovered> uncovered) {

    public Wellbeing {
        silent = List.copyOf(silent);
        alarms = List.copyOf(alarms);
    }

    /** At every hour to come somebody is called. */
    public Wellbeing(
            int watched,
            List<Site> silent,
            int unwatched,
            List<Subject> alarms,
            int aside,
            Proof proof,
            Moment moment) {
        this(watched, silent, unwatched, alarms, aside, proof, moment, Optional.empty());
    }

    /**
     * A time to come in which an alarm is called to nobody at once.
     *
     * @param site of the gap to name
     * @param priorities whose alarms nobody hears, at least one
     * @param from inclusive; it may have begun
     * @param to exclusive
     * @param more how many there are besides, at this site and at others
     */
    public record Uncovered(Site site, Set<Priority> priorities, Instant from, Instant to, int more) {

        public Uncovered {
            priorities = Collections.unmodifiableSet(EnumSet.copyOf(priorities));
        }
    }

    /**
     * What shows that the reader can be reached.
     *
     * @param unproven the ways that nothing has shown to work for 30 days
     * @param newest the way that was proven last, and how many days ago; 0 for today
     */
    public record Proof(List<Way> unproven, Optional<Way> newest, long days) {
        public Proof {
            unproven = List.copyOf(unproven);
        }
    }

    /**
     * @param zone of the reader's clock
     * @param due when it should have been said; empty when that is now
     */
    public record Moment(Instant now, ZoneId zone, Optional<Instant> due) {}
}
