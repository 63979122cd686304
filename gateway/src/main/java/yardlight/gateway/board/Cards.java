package yardlight.gateway.board;

import java.util.List;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.gateway.page.Reasons;
import yardlight.gateway.page.Telling;

/** Puts the alarms of one site into words. */
final class Cards {

    private final Telling telling;

    Cards(Telling telling) {
        this.telling = telling;
    }

    Sheet.Card of(RecordedAlarm recorded) {
        Alarm alarm = recorded.alarm();
        return new Sheet.Card(
                alarm.id(),
                telling.subject(alarm),
                alarm.state().awaitsAnswer(),
                telling.priority(alarm.priority()),
                telling.standing(alarm),
                telling.reading(alarm),
                since(alarm),
                alarm.measured()
                        .text()
                        .map(text -> Reasons.of(text, telling.tongue()))
                        .orElse(""),
                recorded.callout().map(Telling::said).orElse(""),
                recorded.callout().map(telling::next).orElse(""),
                recorded.callout().map(this::sayings).orElse(List.of()));
    }

    /** In a line of its own, and so with the name of its site. */
    Sheet.Row row(RecordedAlarm recorded) {
        Alarm alarm = recorded.alarm();
        return new Sheet.Row(
                alarm.id(),
                telling.names().site(alarm.key().site()) + " " + telling.subject(alarm),
                telling.standing(alarm),
                telling.priority(alarm.priority()),
                since(alarm));
    }

    private String since(Alarm alarm) {
        return alarm.occurredAt().map(telling.clock()::read).orElse("");
    }

    private List<Sheet.Saying> sayings(RecordedCallout callout) {
        return callout.notices().stream().map(this::saying).toList();
    }

    private Sheet.Saying saying(RecordedNotice notice) {
        return new Sheet.Saying(telling.names().contact(notice.notice().contact()), telling.fate(notice));
    }
}
