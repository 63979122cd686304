package yardlight.gateway.answer;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;

/** The alarms that wait for an answer, with the calls that were made for them. */
record Waiting(List<RecordedAlarm> alarms) {

    static Waiting of(List<RecordedAlarm> current) {
        return new Waiting(current.stream()
                .filter(one ->
                        one.alarm().state().awaitsAnswer() && one.callout().isPresent())
                .toList());
    }

    /** Those of the call with this code, whoever was told of it. */
    List<Alarm> withCode(int code) {
        return alarms.stream()
                .filter(one -> facts(one).code() == code)
                .map(RecordedAlarm::alarm)
                .toList();
    }

    /** Those that these contacts were told of. */
    List<Alarm> toldTo(Set<String> contacts) {
        return toldOf(contacts).stream().map(RecordedAlarm::alarm).toList();
    }

    /** The codes of the calls that these contacts were told of. */
    Set<Integer> codesOf(Set<String> contacts) {
        return toldOf(contacts).stream().map(one -> facts(one).code()).collect(Collectors.toSet());
    }

    private List<RecordedAlarm> toldOf(Set<String> contacts) {
        return alarms.stream()
                .filter(one -> facts(one).told().stream().anyMatch(contacts::contains))
                .toList();
    }

    private static Callout.Facts facts(RecordedAlarm one) {
        return one.callout().orElseThrow().callout().facts();
    }
}
