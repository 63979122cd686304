package yardlight.escalation;

import java.time.Instant;
import yardlight.escalation.wording.Links;

/**
 * The decision: old state, stimulus and time in; new state, log lines and an answer out. It asks no clock and nobody
 * else; the same arguments always give the same decision, apart from the answer codes, which are drawn.
 *
 * <p>Each stimulus is taken by the class that has its rules: {@link Reports} what boxes say, {@link Silence} what they
 * do not say, {@link Answers} what people do, {@link Calls} whom to call and when, {@link Notices} what reaches them.
 */
public final class Escalator {

    private final Links links;
    private final Codes codes;

    public Escalator(Links links, Codes codes) {
        this.links = links;
        this.codes = codes;
    }

    /**
     * Decides.
     *
     * @param now the time at which the stimulus is taken, not before that of the decision before
     */
    public Decision decide(Situation before, Stimulus stimulus, Instant now) {
        var draft = new Draft(before, now);
        var calls = new Calls(draft, codes, new Notices(draft, links));
        Answer answer = take(draft, calls, stimulus);
        return draft.decision(answer);
    }

    private static Answer take(Draft draft, Calls calls, Stimulus stimulus) {
        return switch (stimulus.kind()) {
            case REPORTED -> new Reports(draft, calls).take((Stimulus.Reported) stimulus);
            case BEAT -> new Silence(draft, calls).beat((Stimulus.Beat) stimulus);
            case ALARM_DUE -> new Reports(draft, calls).due(((Stimulus.AlarmDue) stimulus).key());
            case CALLOUT_DUE -> calls.due(((Stimulus.CalloutDue) stimulus).callout());
            case DESK_DUE -> calls.notices().release(((Stimulus.DeskDue) stimulus).contact());
            case BOX_DUE -> new Silence(draft, calls).due(((Stimulus.BoxDue) stimulus).box());
            case ACKNOWLEDGE -> new Answers(draft, calls).acknowledge((Stimulus.Acknowledge) stimulus);
            case ANSWER_NOTICE -> new Answers(draft, calls).answer((Stimulus.AnswerNotice) stimulus);
            case SHELVE -> new Answers(draft, calls).shelve((Stimulus.Shelve) stimulus);
            case UNSHELVE -> new Answers(draft, calls).unshelve((Stimulus.Unshelve) stimulus);
            case RESET -> new Answers(draft, calls).reset((Stimulus.Reset) stimulus);
            case NOTICE_FATE -> calls.fate((Stimulus.NoticeFate) stimulus);
            case SETUP_CHANGED -> new Reports(draft, calls).setup((Stimulus.SetupChanged) stimulus);
        };
    }
}
