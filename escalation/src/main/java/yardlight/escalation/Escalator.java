package yardlight.escalation;

import java.time.Instant;
import java.util.Optional;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;
import yardlight.escalation.wording.Wellbeing;

/**
 * The decision: old state, stimulus and time in; new state, log lines and an answer out. It asks no clock and nobody
 * else; the same arguments always give the same decision, apart from the answer codes, which are drawn.
 *
 * <p>Each stimulus is taken by the class that has its rules: {@link Reports} what boxes say, {@link Measurements} what they measure,
 * {@link Silence} what they
 * do not say, {@link Answers} what people do, {@link Stops} what they want no more of, {@link Fates} and {@link Outages}
 * what carriers do; {@link Calls}, {@link Climbs} and {@link Endings} are the life of a callout, {@link Notices} and
 * {@link Desks} what reaches a person of it and when, {@link News} what they hear of it afterwards; {@link SignIns} what they hear of the doors; {@link AllsWells}, {@link LineTests} and {@link Proofs} show that
 * they can be reached at all. {@link ShutIns} and {@link ShutInEnds} ask a site to shut in; {@link Swaps}
 * and {@link Handovers} are about whose turn it is.
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
        var notices = new Notices(draft, links, uncovered(stimulus));
        Answer answer = take(draft, new Calls(draft, codes, notices), notices, stimulus);
        return draft.decision(answer);
    }

    private static Optional<Wellbeing.Uncovered> uncovered(Stimulus stimulus) {
        return stimulus instanceof Stimulus.AllsWellDue due ? due.uncovered() : Optional.empty();
    }

    private Answer take(Draft draft, Calls calls, Notices notices, Stimulus stimulus) {
        return switch (stimulus.kind()) {
            case REPORTED -> new Reports(draft, calls).take((Stimulus.Reported) stimulus);
            case MEASURED -> new Measurements(draft, calls).take((Stimulus.Measured) stimulus);
            case BEAT -> beat(draft, calls, notices, (Stimulus.Beat) stimulus);
            case ALARM_DUE -> new Reports(draft, calls).due(((Stimulus.AlarmDue) stimulus).key());
            case CALLOUT_DUE -> calls.climbs().due(((Stimulus.CalloutDue) stimulus).callout());
            case DESK_DUE -> new Desks(draft, notices).release(((Stimulus.DeskDue) stimulus).contact());
            case NOTICE_DUE -> new Fates(draft, calls.climbs(), notices).due((Stimulus.NoticeDue) stimulus);
            case BOX_DUE -> new Silence(draft, calls).due((Stimulus.BoxDue) stimulus);
            case GAUGE_DUE -> new Measurements(draft, calls).due((Stimulus.GaugeDue) stimulus);
            case ACKNOWLEDGE -> new Answers(draft, calls).acknowledge((Stimulus.Acknowledge) stimulus);
            case ANSWER_NOTICE -> new Answers(draft, calls).answer((Stimulus.AnswerNotice) stimulus);
            case SHELVE -> new Answers(draft, calls).shelve((Stimulus.Shelve) stimulus);
            case UNSHELVE -> new Answers(draft, calls).unshelve((Stimulus.Unshelve) stimulus);
            case RESET -> new Answers(draft, calls).reset((Stimulus.Reset) stimulus);
            case NOTICE_FATE -> new Fates(draft, calls.climbs(), notices).take((Stimulus.NoticeFate) stimulus);
            case OVERDUE -> new Fates(draft, calls.climbs(), notices).overdue((Stimulus.Overdue) stimulus);
            case CARRIER -> new Outages(draft, calls, notices).take((Stimulus.Carrier) stimulus);
            case ALLS_WELL_DUE -> new AllsWells(draft, notices).due(((Stimulus.AllsWellDue) stimulus).contact());
            case PUT_OFF -> new Proofs(draft).putOff((Stimulus.PutOff) stimulus);
            case TEST_LINE -> new LineTests(draft, notices).test((Stimulus.TestLine) stimulus);
            case REPLIED -> new Proofs(draft).replied((Stimulus.Replied) stimulus);
            case LINK_USED -> new Proofs(draft).linkUsed((Stimulus.LinkUsed) stimulus);
            case STOPPED -> new Stops(draft, calls, notices).take((Stimulus.Stopped) stimulus);
            case SIGNED_IN -> new SignIns(draft, notices).take((Stimulus.SignedIn) stimulus);
            case HANDOVER -> new Handovers(draft, notices).take(((Stimulus.Handover) stimulus).roster());
            case SHUT_IN -> shutIn(draft, calls, notices, (Stimulus.ShutIn) stimulus);
            case SWAP -> new Swaps(draft, codes, notices).take(((Stimulus.Swap) stimulus).said());
            case SETUP_CHANGED -> setup(draft, calls, notices, (Stimulus.SetupChanged) stimulus);
        };
    }

    private Answer setup(Draft draft, Calls calls, Notices notices, Stimulus.SetupChanged changed) {
        var swaps = new Swaps(draft, codes, notices);
        Optional<Answer> refusal = swaps.refusal(changed);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        Setup before = draft.setup();
        Answer answer = new Reports(draft, calls).setup(changed);
        new Measurements(draft, calls).setup(before);
        new Stops(draft, calls, notices).setup();
        new ShutInEnds(draft, notices, new Reports(draft, calls)).setup(before);
        return changed.taking().map(swaps::taken).orElse(answer);
    }

    private static Answer beat(Draft draft, Calls calls, Notices notices, Stimulus.Beat beat) {
        Answer answer = new Silence(draft, calls).beat(beat);
        return answer instanceof Answer.Refusal ? answer : new ShutIns(draft, notices).offer(beat.box(), answer);
    }

    private static Answer shutIn(Draft draft, Calls calls, Notices notices, Stimulus.ShutIn stimulus) {
        var asking = new ShutIns(draft, notices);
        var ends = new ShutInEnds(draft, notices, new Reports(draft, calls));
        String site = stimulus.site();
        ShutInSaid said = stimulus.said();
        return switch (said.kind()) {
            case DUE -> ends.due(site);
            case ASKED -> asking.ask(site, ((ShutInSaid.Asked) said).asker());
            case WISHED -> asking.wish(site, (ShutInSaid.Wished) said);
            case CODE -> asking.code(site, (ShutInSaid.Code) said);
            case TRY -> asking.attempt(site, (ShutInSaid.Try) said);
            case TRIED -> ends.tried(site, (ShutInSaid.Tried) said);
            case TURNED_ON -> ends.turnOn(site, (ShutInSaid.TurnedOn) said);
            case TURNED_OFF -> ends.turnOff(site, (ShutInSaid.TurnedOff) said);
        };
    }
}
