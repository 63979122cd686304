package yardlight.gateway.board;

import java.util.List;
import java.util.Set;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/** The people whom no line reaches because they wanted nothing more by any. */
final class Unreachable {

    private Unreachable() {}

    static List<String> of(Setup setup, List<RecordedAlarm> current) {
        Set<AlarmKey> stops =
                Stop.among(current.stream().map(RecordedAlarm::alarm).toList());
        return setup.contacts().values().stream()
                .filter(contact -> Stop.everywhere(contact, stops))
                .map(contact -> contact.name() + ": wants nothing more by any line, and is not called")
                .toList();
    }
}
