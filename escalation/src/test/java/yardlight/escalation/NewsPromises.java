package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.quiet.Restraint;
import yardlight.escalation.rehearsal.Happening;

/** What must hold of news on every night. */
final class NewsPromises {

    private final RandomNight night;
    private final Map<AlarmKey, Alarm> alarms = new HashMap<>();
    private final Map<String, Callout> callouts = new HashMap<>();
    private final Map<String, Notice> notices = new HashMap<>();
    private final Map<String, List<String>> calls = new HashMap<>();
    private final Map<String, List<Instant>> texts = new HashMap<>();
    private final Map<String, List<Instant>> news = new HashMap<>();
    private final Set<String> told = new HashSet<>();
    private final Set<String> sent = new HashSet<>();

    private NewsPromises(RandomNight night) {
        this.night = night;
    }

    static void hold(RandomNight night) {
        var promises = new NewsPromises(night);
        night.happenings().forEach(promises::step);
    }

    private void step(Happening step) {
        Changes changes = step.decision().changes();
        changes.alarms().forEach(alarm -> alarms.put(alarm.key(), alarm));
        changes.callouts().forEach(callout -> callouts.put(callout.id(), callout));
        changes.notices().forEach(this::once);
        changes.notices().forEach(this::keep);
        for (Notice notice : night.sent(step)) {
            if (sent.add(notice.id())) {
                if (notice.purpose() == Purpose.NEWS) {
                    restrained(notice, step.at());
                    deserved(notice);
                    count(news, notice).add(step.at());
                }
                count(texts, notice).add(step.at());
            }
        }
    }

    private void keep(Notice notice) {
        if (notices.put(notice.id(), notice) == null && notice.purpose() == Purpose.CALL) {
            notice.callouts()
                    .forEach(id -> calls.computeIfAbsent(notice.contact() + " " + id, any -> new ArrayList<>())
                            .add(notice.id()));
        }
    }

    private static List<Instant> count(Map<String, List<Instant>> times, Notice notice) {
        return times.computeIfAbsent(notice.contact(), any -> new ArrayList<>());
    }

    private void once(Notice notice) {
        boolean own = notice.purpose() == Purpose.NEWS && !notice.id().contains(".news.");
        Notice before = notices.get(notice.id());
        boolean out = notice.state() == NoticeState.BUNDLED || notice.state() == NoticeState.QUEUED;
        boolean waited = before == null || before.state() == NoticeState.HELD;
        if (notice.state() == NoticeState.HELD && !waited) {
            told.remove(notice.id());
        }
        holds(!own || !out || !waited || told.add(notice.id()), "it is told once", notice);
    }

    private void restrained(Notice notice, Instant now) {
        int limit = night.setup().contacts().get(notice.contact()).textsPerHour();
        holds(count(texts, notice, now.minus(Duration.ofHours(1))) < limit, "news keep to the limit", notice);
        Instant window = now.minus(Restraint.NEWS_WITHIN);
        holds(count(news, notice, window) < Restraint.NEWS, "news are few", notice);
    }

    private static long count(Map<String, List<Instant>> times, Notice notice, Instant since) {
        return times.getOrDefault(notice.contact(), List.of()).stream()
                .filter(at -> at.isAfter(since))
                .count();
    }

    private void deserved(Notice notice) {
        for (String id : notice.callouts()) {
            boolean reached = calls.getOrDefault(notice.contact() + " " + id, List.of()).stream()
                    .map(notices::get)
                    .anyMatch(call -> call.state() == NoticeState.HANDED_OVER || call.state() == NoticeState.DELIVERED);
            holds(reached, "news go to those who had a text about it", notice);
            boolean holds = callouts.get(id).facts().alarms().stream()
                    .map(alarms::get)
                    .filter(alarm -> alarm.callout().filter(id::equals).isPresent())
                    .anyMatch(alarm -> alarm.active() && alarm.state().calls());
            holds(!holds, "nothing is over that is there", notice);
        }
    }

    private static void holds(boolean promise, String name, Object what) {
        if (!promise) {
            throw new AssertionError(name + ": " + what);
        }
    }
}
