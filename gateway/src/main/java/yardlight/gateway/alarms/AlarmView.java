package yardlight.gateway.alarms;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.gateway.silence.SilenceView;

/** An alarm in the form of the contract. What there is not is left out. Rungs and rounds count from 1, as people do. */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record AlarmView(
        String id,
        String site,
        Optional<String> box,
        String point,
        String condition,
        String priority,
        String state,
        Optional<BigDecimal> value,
        Optional<BigDecimal> limit,
        Optional<String> unit,
        Optional<String> text,
        int repeats,
        Optional<Instant> occurredAt,
        Optional<Instant> receivedAt,
        Optional<Instant> acknowledgedAt,
        Optional<String> acknowledgedBy,
        Optional<Instant> returnedAt,
        Optional<Instant> shelvedUntil,
        Optional<SilenceView> silence,
        Optional<CalloutView> callout) {

    /**
     * @param silence what the silence is taken for, if it is the alarm of one
     * @param text how much of a notice's text is shown
     */
    static AlarmView of(RecordedAlarm recorded, Optional<SilenceView> silence, Function<Notice, String> text) {
        Alarm alarm = recorded.alarm();
        return new AlarmView(
                alarm.id(),
                alarm.key().site(),
                alarm.box(),
                alarm.key().point(),
                alarm.condition(),
                alarm.priority().word(),
                alarm.state().word(),
                alarm.measured().value(),
                alarm.measured().limit(),
                alarm.measured().unit(),
                alarm.measured().text(),
                alarm.repeats(),
                alarm.occurredAt(),
                alarm.receivedAt(),
                alarm.acknowledgedAt(),
                alarm.acknowledgedBy(),
                alarm.returnedAt(),
                alarm.shelvedUntil(),
                silence,
                recorded.callout().map(callout -> CalloutView.of(callout, text)));
    }

    /** What is done about it. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record CalloutView(
            String state,
            String ladder,
            int rung,
            int round,
            Optional<Instant> nextAt,
            int code,
            List<NoticeView> notices) {

        static CalloutView of(RecordedCallout recorded, Function<Notice, String> text) {
            Callout callout = recorded.callout();
            return new CalloutView(
                    callout.kind().word(),
                    callout.facts().ladder(),
                    callout.place().rung() + 1,
                    callout.place().round() + 1,
                    callout.dueAt(),
                    callout.facts().code(),
                    recorded.notices().stream()
                            .map(notice -> NoticeView.of(notice, text))
                            .toList());
        }
    }

    /**
     * What one person is told.
     *
     * @param purpose {@code news} for what they hear afterwards; not there for a call
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record NoticeView(
            String id,
            String contact,
            Optional<String> purpose,
            Optional<String> channel,
            String text,
            String state,
            Instant queuedAt,
            Optional<Instant> heldUntil,
            Optional<Instant> handedOverAt,
            Optional<Instant> deliveredAt,
            List<AttemptView> attempts) {

        static NoticeView of(RecordedNotice recorded, Function<Notice, String> text) {
            var notice = recorded.notice();
            return new NoticeView(
                    notice.id(),
                    notice.contact(),
                    Optional.of(notice.purpose())
                            .filter(purpose -> purpose != Purpose.CALL)
                            .map(Purpose::word),
                    recorded.channel(),
                    text.apply(notice),
                    notice.state().word(),
                    notice.queuedAt(),
                    notice.heldUntil(),
                    recorded.handedOverAt(),
                    recorded.deliveredAt(),
                    recorded.attempts().stream()
                            .map(attempt -> new AttemptView(attempt.at(), attempt.outcome(), attempt.detail()))
                            .toList());
        }
    }

    /** One try to hand a notice over. */
    record AttemptView(Instant at, String outcome, String detail) {}
}
