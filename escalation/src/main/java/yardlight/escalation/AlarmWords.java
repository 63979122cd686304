package yardlight.escalation;

import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;

/** How the log speaks of alarms and reports. */
final class AlarmWords {

    private AlarmWords() {}

    /** The state that an alarm came to, and whether it wears people out. */
    static String changed(Alarm before, Alarm after, Timing timing) {
        Nuisance.Numbers numbers = timing.nuisance();
        boolean chatters = after.active() && Nuisance.chattering(after.activations(), numbers);
        boolean fleeting = before.state() == AlarmState.UNACKNOWLEDGED
                && after.occurredAt().isPresent()
                && after.returnedAt()
                        .filter(at -> Nuisance.fleeting(after.occurredAt().get(), at, numbers))
                        .isPresent();
        return after.state().word() + (chatters ? ", chattering" : "") + (fleeting ? ", fleeting" : "");
    }

    /** What was reported, with its numbers as they came. */
    static String reported(Report report) {
        Measured measured = report.measured();
        String unit = measured.unit().map(name -> " " + name).orElse("");
        return report.key().local()
                + (report.active() ? " active" : " normal")
                + measured.value()
                        .map(value -> " " + value.toPlainString() + unit)
                        .orElse("")
                + measured.limit()
                        .map(limit -> " (limit " + limit.toPlainString() + ")")
                        .orElse("");
    }
}
