package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * A carrier goes down and comes back. It is an alarm like any other, for those who can be told by another one. What was
 * on its way goes by the contact's other lines, or waits on the contact's desk; once the carrier is back each desk is
 * cleared as at the end of quiet hours: what is over is not sent, the rest goes out in one message.
 */
final class Outages {

    /** Between the desks of one priority and those of the next, so that the worst goes out first. */
    private static final Duration STEP = Duration.ofSeconds(1);

    private final Draft draft;
    private final Calls calls;
    private final Carriers carriers;
    private final Detours detours;

    Outages(Draft draft, Calls calls, Notices notices) {
        this.draft = draft;
        this.calls = calls;
        this.carriers = new Carriers(draft);
        this.detours = new Detours(draft, calls.climbs(), notices);
    }

    Answer take(Stimulus.Carrier said) {
        var reports = new Reports(draft, calls);
        boolean news = carriers.down(said.channel()) != said.down();
        if (news) {
            report(said, reports);
        }
        if (said.down()) {
            draft.queued(said.channel()).forEach(notice -> detours.take(notice, said.channel() + " is down"));
        } else if (news) {
            draft.setup().contacts().values().stream()
                    .filter(contact -> contact.lines().stream()
                            .anyMatch(line -> line.channel().equals(said.channel())))
                    .forEach(this::wake);
        }
        reports.finish(Site.GATEWAY);
        return new Answer.Done();
    }

    private void report(Stimulus.Carrier said, Reports reports) {
        AlarmKey key = Setup.carrier(said.channel());
        Measured measured = Measured.words(said.words());
        draft.log(
                Entry.What.CARRIER,
                Map.of("site", Site.GATEWAY, "channel", said.channel()),
                "carrier " + said.channel() + (said.down() ? " is down: " : " is back: ")
                        + measured.text().orElseThrow());
        reports.report(
                new Report(key, Optional.empty(), said.down(), Optional.empty(), measured, draft.now(), false),
                Priority.HIGH);
    }

    private void callouts(Notice notice, Consumer<Callout> then) {
        notice.callouts().forEach(id -> draft.callout(id).ifPresent(then));
    }

    /** What waited for a carrier is due now, the desks with the worst first. */
    private void wake(Contact contact) {
        Desk desk = draft.desk(contact.id());
        Instant soon = draft.now().plus(Carriers.ASK_AGAIN);
        List<Notice> waiting = desk.ready(soon).stream()
                .flatMap(id -> draft.notice(id).stream())
                .filter(notice -> notice.state() == NoticeState.HELD)
                .toList();
        waiting.stream().map(Notice::priority).max(Priority::compareTo).ifPresent(worst -> {
            int later = Priority.CRITICAL.ordinal() - worst.ordinal();
            // A moment later: what is due in this very instant may just have fired.
            Instant at = draft.now().plusMillis(1).plus(STEP.multipliedBy(later));
            Instant then = new Outside(draft).lost() && waiting.stream().allMatch(this::ofSilence)
                    ? at.plus(Outside.SETTLE)
                    : at;
            waiting.forEach(notice -> wake(notice, then));
            draft.put(desk.due(soon, then));
        });
    }

    /** Whether it is only about boxes that were not heard: they may be heard any moment. */
    private boolean ofSilence(Notice notice) {
        return notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> callout.facts().alarms().stream())
                .allMatch(key -> BoxAlarms.isSilence(key) || Setup.isCarrier(key));
    }

    private void wake(Notice notice, Instant at) {
        draft.put(notice.held(at));
        callouts(notice, callout -> wake(callout, notice.contact(), at));
    }

    /** A callout that nobody could be called for goes on together with the desk. */
    private void wake(Callout callout, String contact, Instant at) {
        if (callout instanceof Callout.Held waiting && callout.facts().held().containsKey(contact)) {
            var held = new TreeMap<>(callout.facts().held());
            held.put(contact, at);
            Callout.Facts facts = callout.facts().withReached(callout.facts().told(), held);
            Instant until = waiting.until().isAfter(at) ? at : waiting.until();
            draft.put(new Callout.Held(facts, callout.place(), until));
        }
    }
}
