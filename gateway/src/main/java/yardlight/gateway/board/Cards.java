package yardlight.gateway.board;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;

/** Puts alarms into words. */
final class Cards {

    private final Names names;
    private final Instant now;

    Cards(Setup setup, Instant now) {
        this.names = new Names(setup);
        this.now = now;
    }

    Sheet.Card of(RecordedAlarm recorded) {
        Alarm alarm = recorded.alarm();
        var clock = new Clockface(names.zone(alarm.key().site()), now, Locale.ENGLISH);
        return new Sheet.Card(
                alarm.id(),
                names.alarm(alarm),
                alarm.priority().word(),
                standing(alarm, clock),
                reading(alarm),
                alarm.occurredAt().map(clock::read).orElse(""),
                alarm.measured().text().orElse(""),
                recorded.callout().map(Cards::said).orElse(""),
                recorded.callout()
                        .map(callout -> Standing.next(callout, clock, names))
                        .orElse(""),
                recorded.callout().map(callout -> sayings(callout, clock)).orElse(List.of()));
    }

    private String standing(Alarm alarm, Clockface clock) {
        return Standing.of(
                alarm.state(),
                alarm.acknowledgedBy().map(names::contact).orElse("somebody"),
                alarm.shelvedUntil().map(clock::read).orElse(""));
    }

    private static String reading(Alarm alarm) {
        String unit = alarm.measured().unit().map(text -> " " + text).orElse("");
        Optional<String> value =
                alarm.measured().value().map(BigDecimal::toPlainString).map(text -> text + unit);
        Optional<String> limit = alarm.measured().limit().map(text -> "limit " + text.toPlainString() + unit);
        return value.map(text -> text + limit.map(most -> ", " + most).orElse(""))
                .or(() -> limit)
                .orElse("");
    }

    /** The newest call; notices that wait have no text yet. */
    private static String said(RecordedCallout callout) {
        return callout.notices().stream()
                .filter(notice -> notice.notice().purpose() == Purpose.CALL)
                .map(notice -> notice.notice().text())
                .filter(text -> !text.isEmpty())
                .reduce("", (older, newer) -> newer);
    }

    private List<Sheet.Saying> sayings(RecordedCallout callout, Clockface clock) {
        return callout.notices().stream().map(notice -> saying(notice, clock)).toList();
    }

    private Sheet.Saying saying(RecordedNotice notice, Clockface clock) {
        return new Sheet.Saying(names.contact(notice.notice().contact()), Standing.of(notice, clock));
    }
}
