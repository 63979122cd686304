package yardlight.gateway.alarms;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.Silences;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.notice.Notice;
import yardlight.gateway.silence.SilenceView;

/** Alarms in the form of the contract, those of a silence with what it is taken for. */
@Component
class AlarmViews {

    private final Silences silences;

    AlarmViews(Silences silences) {
        this.silences = silences;
    }

    /**
     * @param text how much of a notice's text is shown
     */
    List<AlarmView> of(List<RecordedAlarm> alarms, Function<Notice, String> text) {
        Map<String, Absence> absences = silences.of(alarms.stream()
                .filter(one -> one.alarm().reading().isPresent())
                .map(one -> one.alarm().id())
                .toList());
        return alarms.stream()
                .map(one -> AlarmView.of(
                        one,
                        Optional.ofNullable(absences.get(one.alarm().id())).map(SilenceView::of),
                        text))
                .toList();
    }

    AlarmView of(RecordedAlarm alarm, Function<Notice, String> text) {
        return of(List.of(alarm), text).get(0);
    }
}
