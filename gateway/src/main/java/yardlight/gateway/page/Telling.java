package yardlight.gateway.page;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;

/**
 * How alarms, calls and notices stand, in words for people and with the times of a site. From states to words, and nothing
 * else: the words are in {@code words/alarm}.
 */
public record Telling(Tongue tongue, Names names, Clockface clock) {

    private static final Pattern JOINED = Pattern.compile("joined the callout with code (\\d+)");

    /** {@code Nobody has it}. */
    public String standing(Alarm alarm) {
        if (alarm.pendingSince().isPresent() && !alarm.active()) {
            return tongue.say("standing.pending");
        }
        String by = alarm.acknowledgedBy().map(names::contact).orElseGet(() -> tongue.say("standing.somebody"));
        String until = alarm.shelvedUntil().map(clock::read).orElse("");
        return tongue.say("standing." + alarm.state().word(), by, until);
    }

    public String priority(Priority priority) {
        return tongue.say("priority." + priority.word());
    }

    /** {@code WATER TANK high-high}: without the site. */
    public String subject(Alarm alarm) {
        return names.point(alarm.key()) + " " + condition(alarm.condition());
    }

    /** A condition; one that nobody has words for goes by its id. */
    public String condition(String id) {
        return sayOr("condition." + id, id);
    }

    /** {@code 18.4 ft, limit 18.0 ft}; may be empty. */
    public String reading(Alarm alarm) {
        String unit = alarm.measured().unit().map(text -> " " + text).orElse("");
        Optional<String> value =
                alarm.measured().value().map(BigDecimal::toPlainString).map(text -> text + unit);
        Optional<String> limit = alarm.measured().limit().map(text -> tongue.say("limit", text.toPlainString() + unit));
        return value.map(text -> text + limit.map(most -> ", " + most).orElse(""))
                .or(() -> limit)
                .orElse("");
    }

    /** The newest call as it went out; without its link, which is there to answer by. Empty when none has a text yet. */
    public static String said(RecordedCallout callout) {
        return callout.notices().stream()
                .map(RecordedNotice::notice)
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .map(Notice::text)
                .filter(text -> !text.isEmpty())
                .reduce("", (older, newer) -> newer)
                .replaceFirst(" (or|o) https?://\\S+$", "");
    }

    /** What happens next by itself. */
    public String next(RecordedCallout recorded) {
        Callout callout = recorded.callout();
        String due = callout.dueAt().map(clock::read).orElse("");
        return switch (callout.kind()) {
            case CALLING ->
                tongue.say(
                        "next.calling",
                        place(callout.place().rung()),
                        place(callout.place().round()),
                        due);
            case HELD -> tongue.say("next.held", due);
            case ANSWERED -> tongue.say("next.answered", names.contact(((Callout.Answered) callout).by()));
            case ENDED -> tongue.say("next.ended", reason(((Callout.Ended) callout).reason()));
            case EXHAUSTED -> tongue.say("next.exhausted");
        };
    }

    /** People count from 1. */
    private static String place(int from0) {
        return Integer.toString(from0 + 1);
    }

    /** Why a callout ended; in the engine's own words where there are no others. */
    public String reason(String words) {
        Matcher joined = JOINED.matcher(words);
        if (joined.matches()) {
            return tongue.say("reason.joined", joined.group(1));
        }
        return sayOr("reason." + words.toLowerCase(Locale.ROOT).replace(' ', '-'), words);
    }

    /** What became of a notice, and by which way: {@code sent by sms-mail 2:14 AM}. */
    public String fate(RecordedNotice recorded) {
        String way = recorded.channel().map(this::by).orElse("");
        Instant queued = recorded.notice().queuedAt();
        return switch (recorded.notice().state()) {
            case QUEUED -> tongue.say("fate.queued", way, clock.read(queued));
            case HELD ->
                tongue.say(
                        "fate.held",
                        recorded.notice().heldUntil().map(clock::read).orElseGet(() -> tongue.say("fate.later")));
            case BUNDLED -> tongue.say("fate.bundled");
            case HANDED_OVER ->
                tongue.say(
                        "fate.handed-over",
                        way,
                        clock.read(recorded.handedOverAt().orElse(queued)));
            case DELIVERED ->
                tongue.say(
                        "fate.delivered", way, clock.read(recorded.deliveredAt().orElse(queued)));
            case REFUSED -> tongue.say("fate.refused", clock.read(queued));
            case CANCELLED -> tongue.say("fate.cancelled");
        };
    }

    /** {@code " by sms-mail"}, to be put behind a verb. */
    public String by(String way) {
        return " " + sayOr("way." + way, tongue.say("way", way));
    }

    private String sayOr(String key, String otherwise) {
        return Optional.ofNullable(tongue.words().getMessage(key, null, null, tongue.locale()))
                .orElse(otherwise);
    }
}
