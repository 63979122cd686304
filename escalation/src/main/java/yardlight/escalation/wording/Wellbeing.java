package yardlight.escalation.wording;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.setup.Site;

/**
 * How everything stands at one moment, as far as one person wants to know it every day.
 *
 * @param watched how many sites are expected to send heartbeats
 * @param silent those of them that do not
 * @param unwatched how many sites send none anyway
 * @param alarms what is not normal, the worst first
 * @param aside how many alarms are kept from people
 */
public record Wellbeing(
        int watched, List<Site> silent, int unwatched, List<Subject> alarms, int aside, Proof proof, Moment moment) {

    public Wellbeing {
        silent = List.copyOf(silent);
        alarms = List.copyOf(alarms);
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
