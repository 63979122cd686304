package yardlight.gateway.board;

import java.util.List;
import java.util.Set;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.page.Tongue;

/** The people whom no line reaches because they wanted nothing more by any. */
final class Unreachable {

    private Unreachable() {}

    static List<String> of(Setup setup, List<RecordedAlarm> current, Tongue tongue) {
        Set<AlarmKey> stops =
                Stop.among(current.stream().map(RecordedAlarm::alarm).toList());
        return setup.contacts().values().stream()
                .filter(contact -> Stop.everywhere(contact, stops))
                .map(contact -> tongue.say("now.stopped", contact.name()))
                .toList();
    }
}
