package yardlight.escalation;

import java.util.Map;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Judgement;
import yardlight.escalation.heartbeat.Verdict;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.setup.Box;

/** What a silence is taken for, written on its alarm, and who has to hear when that changes. */
final class Verdicts {

    private final Draft draft;
    private final Reports reports;
    private final Notices notices;

    Verdicts(Draft draft, Reports reports, Notices notices) {
        this.draft = draft;
        this.reports = reports;
        this.notices = notices;
    }

    /** The alarm of a silence, taken for this from the first. */
    void begin(AlarmKey key, Box box, Judgement judgement) {
        read(key, judgement);
        report(key, box, true, measured(judgement));
    }

    /** The last box is back. */
    void end(AlarmKey key, Box box) {
        report(key, box, false, Measured.NOTHING);
    }

    /** A silence is taken for something else by what has been found. People hear of it if it changes what they should do. */
    void change(Absence absence, Judgement now, String why) {
        Verdict before = absence.verdict();
        draft.put(absence.judged(now));
        read(absence.key(), now);
        if (before == now.verdict()) {
            return;
        }
        draft.log(
                Entry.What.BOX,
                Map.of("site", absence.key().site(), "alarm", absence.alarm()),
                absence.key().local() + " is taken for " + now.verdict().condition() + " now, it was "
                        + before.condition() + ": " + why);
        reports.realign(absence.key().site());
        boolean news = before == Verdict.POWER_OFF || now.verdict() == Verdict.POWER_OFF;
        if (news && absence.open()) {
            draft.alarm(absence.key())
                    .callout()
                    .flatMap(draft::callout)
                    .filter(Callout::live)
                    .ifPresent(callout ->
                            draft.put(callout.with(notices.additions().tellMore(callout.facts(), true))));
        }
    }

    private void read(AlarmKey key, Judgement judgement) {
        Alarm alarm = draft.alarm(key);
        draft.put(alarm.draft()
                .reading(Optional.of(judgement.verdict().condition()))
                .measured(alarm.active() ? measured(judgement) : alarm.measured())
                .done());
    }

    private void report(AlarmKey key, Box box, boolean active, Measured measured) {
        if (draft.alarm(key).reported() != active) {
            reports.report(
                    new Report(key, Optional.of(box.id()), active, Optional.empty(), measured, draft.now(), false),
                    Priority.HIGH);
        }
    }

    private static Measured measured(Judgement judgement) {
        return judgement.reasons().isEmpty()
                ? Measured.NOTHING
                : Measured.words(String.join("; ", judgement.reasons()));
    }

    static String words(Judgement judgement) {
        String reasons = String.join("; ", judgement.reasons());
        return judgement.verdict().condition() + (reasons.isEmpty() ? "" : ", because " + reasons);
    }
}
