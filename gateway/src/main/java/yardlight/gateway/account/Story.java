package yardlight.gateway.account;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardlight.db.alarm.RecordedAttempt;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.db.log.LogLine;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Telling;

/** What happened to an alarm, in order and in plain words: from its log, and from what became of its notices. */
final class Story {

    /** A report that took longer is told apart from what it reports. */
    private static final Duration LATE = Duration.ofMinutes(1);

    private final Telling telling;
    private final List<Moment> moments = new ArrayList<>();

    Story(Telling telling) {
        this.telling = telling;
    }

    List<Moment> of(Alarm alarm, List<LogLine> log, List<RecordedCallout> callouts) {
        began(alarm);
        log(alarm, log);
        callouts.stream()
                .flatMap(callout -> callout.notices().stream())
                .distinct()
                .forEach(this::notice);
        // Stable: what happened in the same moment stays in the order in which it was put down.
        moments.sort(Comparator.comparing(Moment::at));
        return List.copyOf(moments);
    }

    private void began(Alarm alarm) {
        Optional<Instant> received = alarm.receivedAt();
        alarm.occurredAt()
                .filter(at -> received.filter(at.plus(LATE)::isBefore).isPresent())
                .ifPresent(at -> {
                    say(at, "began");
                    say(
                            received.orElseThrow(),
                            "reported",
                            new Clockface(
                                            telling.clock().zone(),
                                            received.orElseThrow(),
                                            telling.clock().locale())
                                    .ago(at));
                });
    }

    /** Of the delays that began before it only the last one led to this occurrence. */
    private void log(Alarm alarm, List<LogLine> log) {
        int first = 0;
        while (first < log.size() && !isAbout(alarm, log.get(first))) {
            first++;
        }
        var phrases = new Phrases(telling);
        Instant occurred = Instant.MIN;
        for (int i = Math.max(0, first - 1); i < log.size(); i++) {
            LogLine line = log.get(i);
            boolean event = line.what().equals("event");
            boolean stray = event && !isAbout(alarm, line) && !line.words().endsWith(": delayed");
            // That an alarm which has just begun is an alarm goes without saying.
            boolean plain = line.at().equals(occurred) && line.words().endsWith(" is now unacknowledged");
            if (!stray && !plain) {
                Optional<String> words = phrases.of(line);
                if (!words.equals(Optional.of(""))) {
                    moments.add(new Moment(
                            line.at(), words.orElse(line.words()), words.isEmpty(), Optional.of(line.line())));
                }
            }
            occurred = event ? line.at() : occurred;
        }
    }

    private static boolean isAbout(Alarm alarm, LogLine line) {
        return alarm.id().equals(line.about().get("alarm"))
                || alarm.callout().isPresent()
                        && alarm.callout()
                                .equals(Optional.ofNullable(line.about().get("callout")));
    }

    private void notice(RecordedNotice recorded) {
        String who = telling.names().contact(recorded.notice().contact());
        boolean call = recorded.notice().purpose() == Purpose.CALL;
        String way = recorded.channel().map(telling::by).orElse("");
        NoticeState state = recorded.notice().state();
        Instant queued = recorded.notice().queuedAt();
        if (recorded.attempts().isEmpty() || !call) {
            String text = recorded.notice().text();
            moments.add(new Moment(
                    queued,
                    telling.tongue().say(call ? "story.told" : "story.news", who, telling.fate(recorded))
                            + (call || text.isEmpty() ? "" : ": " + text),
                    false,
                    Optional.empty()));
        } else {
            say(queued, "called", who, way);
            recorded.attempts().forEach(attempt -> attempt(who, attempt));
            if (state == NoticeState.REFUSED) {
                say(last(recorded), "unreached", who);
            }
        }
        recorded.deliveredAt().ifPresent(at -> say(at, "delivered", who, way));
    }

    private void attempt(String who, RecordedAttempt attempt) {
        say(attempt.at(), "attempt." + attempt.outcome(), who, telling.by(attempt.channel()), attempt.detail());
    }

    private static Instant last(RecordedNotice recorded) {
        return recorded.attempts().get(recorded.attempts().size() - 1).at();
    }

    private void say(Instant at, String key, Object... values) {
        moments.add(new Moment(at, telling.tongue().say("story." + key, values), false, Optional.empty()));
    }
}
