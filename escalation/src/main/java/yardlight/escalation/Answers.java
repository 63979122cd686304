package yardlight.escalation;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmRules;
import yardlight.escalation.alarm.AlarmTrigger;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.sentence.Sentence;

/** What people do: answer, put an alarm aside, take it back, reset it, hand over a tour. */
final class Answers {

    private static final Duration LONGEST_SHELF = Duration.ofDays(7);

    private final Draft draft;
    private final Calls calls;

    Answers(Draft draft, Calls calls) {
        this.draft = draft;
        this.calls = calls;
    }

    Answer acknowledge(Stimulus.Acknowledge said) {
        Alarm alarm = draft.alarm(said.key());
        Optional<AlarmRules.Step> step = AlarmRules.acknowledge(alarm, said.by(), timing(said.key()), draft.now());
        if (step.isEmpty()) {
            return refused(AlarmTrigger.ACKNOWLEDGE, alarm);
        }
        String note = said.note().map(text -> ": " + text).orElse("");
        take(step.get(), "acknowledged by " + said.by() + " by " + said.path() + note);
        answered(List.of(said.key()), said.by());
        return new Answer.Done();
    }

    /** The reader of a notice answers: everything that it was about and that still waits is acknowledged. */
    Answer answer(Stimulus.AnswerNotice said) {
        Optional<Notice> notice = draft.notice(said.notice());
        if (notice.isEmpty()) {
            return new Answer.Refusal("notice must exist: " + said.notice());
        }
        if (notice.get().purpose() == Purpose.TEST) {
            return new Proofs(draft).tested(notice.get(), said.path());
        }
        String by = notice.get().contact();
        List<AlarmKey> waiting = notice.get().callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> callout.facts().alarms().stream())
                .distinct()
                .filter(key -> draft.alarm(key).state().awaitsAnswer())
                .filter(key -> notice.get().knows(draft.alarm(key)))
                .toList();
        if (waiting.isEmpty()) {
            return new Answer.Refusal(
                    Sentence.of("answer.nothing-waits", "nothing of this waits for an answer any more"));
        }
        for (AlarmKey key : waiting) {
            AlarmRules.acknowledge(draft.alarm(key), by, timing(key), draft.now())
                    .ifPresent(step -> take(step, "acknowledged by " + by + " by " + said.path()));
        }
        answered(waiting, by);
        return new Answer.Done();
    }

    /** With them goes what is lesser and of the same cause. */
    private void answered(List<AlarmKey> keys, String by) {
        List<AlarmKey> all = Stream.concat(keys.stream(), calls.causes().answeredWith(keys).stream())
                .toList();
        all.stream()
                .map(AlarmKey::site)
                .distinct()
                .forEach(site -> calls.endings()
                        .answered(
                                site,
                                all.stream()
                                        .filter(key -> key.site().equals(site))
                                        .toList(),
                                by));
    }

    Answer shelve(Stimulus.Shelve said) {
        if (said.length().isNegative()
                || said.length().isZero()
                || said.length().compareTo(LONGEST_SHELF) > 0) {
            return new Answer.Refusal(Sentence.of(
                    "shelve.length", "shelving must last more than nothing and at most 7 days: " + said.length()));
        }
        Alarm alarm = draft.alarm(said.key());
        Optional<AlarmRules.Step> step = AlarmRules.shelve(alarm, draft.now().plus(said.length()), timing(said.key()));
        if (step.isEmpty()) {
            return refused(AlarmTrigger.SHELVE, alarm);
        }
        take(step.get(), "shelved by " + said.by() + " for " + said.length() + ": " + said.reason());
        calls.endings().settle(said.key().site(), Optional.empty());
        return new Answer.Done();
    }

    Answer unshelve(Stimulus.Unshelve said) {
        return move(said.key(), AlarmTrigger.UNSHELVE, "unshelved by " + said.by());
    }

    Answer reset(Stimulus.Reset said) {
        return move(said.key(), AlarmTrigger.RESET, "reset by " + said.by());
    }

    private Answer move(AlarmKey key, AlarmTrigger trigger, String words) {
        Alarm alarm = draft.alarm(key);
        Optional<AlarmRules.Step> step = AlarmRules.move(alarm, trigger, timing(key));
        if (step.isEmpty()) {
            return refused(trigger, alarm);
        }
        take(step.get(), words);
        new Reports(draft, calls).resume(key, step.get().calls());
        return new Answer.Done();
    }

    private void take(AlarmRules.Step step, String words) {
        Alarm alarm = step.alarm();
        draft.put(alarm);
        draft.log(
                Entry.What.ANSWER,
                Map.of("site", alarm.key().site(), "alarm", alarm.id()),
                alarm.key().local() + " " + words + ", is now " + alarm.state().word());
    }

    private Timing timing(AlarmKey key) {
        return draft.setup().point(key.site(), key.point()).timing();
    }

    private static Answer refused(AlarmTrigger trigger, Alarm alarm) {
        String what = trigger.word();
        String state = alarm.state().word();
        String key = alarm.key().local();
        String english = "cannot " + what + " an alarm that is " + state + ": " + key;
        return new Answer.Refusal(Sentence.of("cannot", english, what, state, key));
    }
}
