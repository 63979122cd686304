package yardlight.escalation;

import java.util.Optional;
import java.util.Set;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Site;

/**
 * Power supplies that boxes say are off. The worst is one that empties the tanks while one that fills them is on: that is
 * critical, and the text says so.
 */
final class Feeds {

    private final Draft draft;
    private final Reports reports;
    private final Returns returns;
    private final FeedsNow now;

    Feeds(Draft draft, Reports reports, Returns returns) {
        this.draft = draft;
        this.reports = reports;
        this.returns = returns;
        this.now = new FeedsNow(draft);
    }

    /** The box said something of these feeds. Comes back with whether any of that is news. */
    boolean said(Box box, Set<String> feeds) {
        boolean news = false;
        for (String feed : feeds) {
            boolean off = now.off(box.site(), feed);
            news |= report(box, feed, off);
        }
        if (!feeds.isEmpty()) {
            for (String feed : site(box).map(Site::empties).orElse(Set.of())) {
                news |= now.off(box.site(), feed) && now.filling(box.site()).isPresent() && report(box, feed, true);
            }
        }
        return news;
    }

    private Optional<Site> site(Box box) {
        return draft.setup().site(box.site());
    }

    /** Says what changes, and nothing else: a heartbeat that only confirms what is known leaves no trace in the log. */
    private boolean report(Box box, String feed, boolean off) {
        AlarmKey key = BoxAlarms.feedOff(box.site(), feed);
        Alarm alarm = draft.alarm(key);
        boolean worse =
                off && site(box).filter(site -> site.empties().contains(feed)).isPresent();
        Optional<String> filling = worse ? now.filling(box.site()) : Optional.empty();
        Optional<Priority> priority = filling.map(any -> Priority.CRITICAL);
        boolean raised =
                priority.filter(critical -> alarm.priority() != critical).isPresent();
        boolean news = alarm.reported() != off || off && raised;
        if (news && off) {
            returns.feedOff(box, feed);
        } else if (news) {
            returns.feedBack(box, feed);
        }
        if (news) {
            Measured measured = filling.map(other -> Measured.words("feed " + other + " is still on: the tanks fill"))
                    .orElse(Measured.NOTHING);
            reports.report(
                    new Report(key, Optional.of(box.id()), off, priority, measured, draft.now(), false), Priority.HIGH);
        }
        return news;
    }
}
