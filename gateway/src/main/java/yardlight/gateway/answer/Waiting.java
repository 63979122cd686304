package yardlight.gateway.answer;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;

/** The alarms that somebody was called for, the most urgent first: those that wait for an answer, and those that have one. */
record Waiting(List<RecordedAlarm> waiting, List<RecordedAlarm> taken) {

    static Waiting of(List<RecordedAlarm> current) {
        List<RecordedAlarm> called =
                current.stream().filter(one -> one.callout().isPresent()).toList();
        return new Waiting(
                called.stream()
                        .filter(one -> one.alarm().state().awaitsAnswer())
                        .toList(),
                called.stream()
                        .filter(one -> !one.alarm().state().awaitsAnswer()
                                && one.alarm().acknowledgedBy().isPresent())
                        .toList());
    }

    /**
     * What waits, as far as these contacts can mean it: without what came after the newest text about it that a carrier took for
     * them. Whoever had no text about it at all knows its code from somebody else, and means all of it.
     */
    List<RecordedAlarm> knownTo(Set<String> contacts) {
        return waiting.stream()
                .filter(one -> {
                    List<Notice> read = one.callout().orElseThrow().notices().stream()
                            .filter(sent -> sent.handedOverAt().isPresent())
                            .map(RecordedNotice::notice)
                            .filter(notice -> contacts.contains(notice.contact()))
                            .toList();
                    return read.isEmpty() || read.stream().anyMatch(notice -> notice.knows(one.alarm()));
                })
                .toList();
    }

    /** Those of the calls with these codes, whoever was told of them. */
    static List<Alarm> withCodes(Collection<Integer> codes, List<RecordedAlarm> among) {
        return among.stream()
                .filter(one -> codes.contains(facts(one).code()))
                .map(RecordedAlarm::alarm)
                .toList();
    }

    /** Those that these contacts were told of. */
    static List<Alarm> toldTo(Set<String> contacts, List<RecordedAlarm> among) {
        return toldOf(contacts, among).map(RecordedAlarm::alarm).toList();
    }

    /** The codes of the calls that wait and that these contacts were told of. */
    Set<Integer> codesOf(Set<String> contacts) {
        return toldOf(contacts, waiting).map(one -> facts(one).code()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The codes of all calls that these contacts were told of, also of those that have an answer. */
    Set<Integer> toldCodes(Set<String> contacts) {
        return Stream.of(waiting, taken)
                .flatMap(some -> toldOf(contacts, some))
                .map(one -> facts(one).code())
                .collect(Collectors.toSet());
    }

    private static Stream<RecordedAlarm> toldOf(Set<String> contacts, List<RecordedAlarm> among) {
        return among.stream().filter(one -> facts(one).told().stream().anyMatch(contacts::contains));
    }

    private static Callout.Facts facts(RecordedAlarm one) {
        return one.callout().orElseThrow().callout().facts();
    }
}
