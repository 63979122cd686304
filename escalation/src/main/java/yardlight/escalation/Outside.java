package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.setup.Site;

/**
 * The gateway's own connection. If nothing at all arrives and nothing can be sent, it is us: then no site is silent, and
 * nobody is called about forty of them.
 */
final class Outside {

    /** How long boxes have to be heard again before what was found while we heard nothing is told. */
    static final Duration SETTLE = Duration.ofMinutes(3);

    private static final int ENOUGH = 24;
    private static final int FEW = 2;

    private final Draft draft;

    Outside(Draft draft) {
        this.draft = draft;
    }

    /** Whether the gateway is known to be cut off. */
    boolean lost() {
        return draft.alarm(BoxAlarms.OUTSIDE).reported();
    }

    /** Whether it is, now that a box has not been heard in time; says so when that is news. */
    boolean lost(Reports reports, BoxWatch late, Duration every) {
        boolean lost = nothingGoes() && nothingComesSince(late.heardAt().plus(every));
        if (lost && !lost()) {
            report(reports, true, "no box is heard and no carrier takes anything: it is the gateway's own connection");
        }
        return lost;
    }

    /** Something arrived. */
    void heard(Reports reports) {
        if (lost()) {
            report(reports, false, "a box is heard again");
        }
    }

    private boolean nothingGoes() {
        var carriers = new Carriers(draft);
        return !draft.setup().channels().isEmpty()
                && draft.setup().channels().stream().allMatch(carriers::down);
    }

    /** A few boxes are enough to ask; of one alone it cannot be told whether it is the box. */
    private boolean nothingComesSince(Instant missed) {
        List<BoxWatch> asked = draft.setup().boxes().values().stream()
                .filter(box -> box.every().isPresent())
                .flatMap(box -> draft.box(box.id()).stream())
                .limit(ENOUGH)
                .toList();
        return asked.size() >= FEW
                && asked.stream().noneMatch(watch -> watch.heardAt().isAfter(missed));
    }

    private void report(Reports reports, boolean active, String words) {
        var report = new Report(
                BoxAlarms.OUTSIDE,
                Optional.empty(),
                active,
                Optional.empty(),
                Measured.words(words),
                draft.now(),
                false);
        reports.report(report, Priority.HIGH);
        reports.finish(Site.GATEWAY);
    }
}
