package yardlight.escalation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Site;
import yardlight.escalation.setup.Stop;

/**
 * A contact wants nothing more by one of their lines, or takes it up again. Nobody leaves a ladder in silence by that: it is an
 * alarm like any other, for those whom the gateway's own ladder calls. What was on its way goes by the contact's other lines;
 * without any the callouts go on at once, as if they had not been reached.
 */
final class Stops {

    private static final int LONGEST_WORDS = 200;

    private final Draft draft;
    private final Calls calls;
    private final Notices notices;
    private final Carriers carriers;
    private final Detours detours;

    Stops(Draft draft, Calls calls, Notices notices) {
        this.draft = draft;
        this.calls = calls;
        this.notices = notices;
        this.carriers = new Carriers(draft);
        this.detours = new Detours(draft, calls.climbs(), notices);
    }

    Answer take(Stimulus.Stopped said) {
        Optional<Contact> contact = Optional.ofNullable(draft.setup().contacts().get(said.contact()))
                .filter(known -> channels(known, said.address()).findAny().isPresent());
        if (contact.isEmpty()) {
            return new Answer.Refusal("line must be set up: " + said.contact() + ", " + said.address());
        }
        AlarmKey key = Stop.key(said.contact(), said.address());
        if (draft.stops().contains(key) != said.stopped()) {
            var reports = new Reports(draft, calls);
            report(said, contact.get(), reports);
            if (said.stopped()) {
                leave(contact.get());
            }
            reports.finish(Site.GATEWAY);
        }
        return new Answer.Done();
    }

    /** Another setup: a line that is gone stops nothing any more, and somebody may be left with stopped lines only. */
    void setup() {
        var reports = new Reports(draft, calls);
        for (AlarmKey key : draft.stops()) {
            Optional<Contact> contact = draft.setup().contacts().values().stream()
                    .filter(known -> known.lines().stream()
                            .anyMatch(
                                    line -> Stop.key(known.id(), line.address()).equals(key)))
                    .findFirst();
            contact.ifPresentOrElse(this::leave, () -> say(key, false, "the line is no longer set up", reports));
        }
        reports.finish(Site.GATEWAY);
    }

    private static Stream<String> channels(Contact contact, String address) {
        return contact.lines().stream()
                .filter(line -> line.address().equals(address))
                .map(Line::channel);
    }

    private void report(Stimulus.Stopped said, Contact contact, Reports reports) {
        boolean others = contact.lines().stream()
                .anyMatch(line -> !line.address().equals(said.address()) && !carriers.stopped(contact, line));
        String nobody = said.stopped() && !others ? "; no line to " + contact.name() + " is left" : "";
        String channel = channels(contact, said.address()).findFirst().orElseThrow();
        draft.log(
                Entry.What.LINE,
                Map.of("site", Site.GATEWAY, "contact", contact.id(), "channel", channel),
                "line " + channel + " of " + contact.id() + (said.stopped() ? " is stopped: " : " is taken up again: ")
                        + said.words() + nobody);
        say(Stop.key(contact.id(), said.address()), said.stopped(), said.words() + nobody, reports);
    }

    private void say(AlarmKey key, boolean stopped, String words, Reports reports) {
        String shown = words.substring(0, Math.min(LONGEST_WORDS, words.length()));
        var measured = new Measured(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(shown));
        reports.report(
                new Report(key, Optional.empty(), stopped, Optional.empty(), measured, draft.now(), false),
                Priority.HIGH);
    }

    private void leave(Contact contact) {
        List<Notice> queued = contact.lines().stream()
                .map(Line::channel)
                .distinct()
                .flatMap(channel -> draft.queued(channel).stream())
                .filter(notice -> notice.contact().equals(contact.id())
                        && carriers.stopped(contact, contact.lines().get(notice.line())))
                .toList();
        queued.forEach(notice -> detours.take(notice, "nothing more goes to this line"));
        if (!carriers.has(contact.id(), 0)) {
            forget(contact.id());
        }
    }

    /** Nobody waits for somebody whom no line reaches: neither for their answer nor for the end of their quiet hours. */
    private void forget(String contact) {
        notices.news().forget(contact);
        draft.desk(contact).waiting().stream()
                .map(Desk.Waiting::notice)
                .flatMap(id -> draft.notice(id).stream())
                .filter(notice -> notice.state() == NoticeState.HELD)
                .forEach(notice -> notices.refuse(notice, "nothing more goes to any line of theirs"));
        List<Callout> waiting = Stream.concat(draft.setup().sites().keySet().stream(), Stream.of(Site.GATEWAY))
                .distinct()
                .flatMap(site -> draft.calloutsAt(site).stream())
                .filter(callout -> callout.facts().told().contains(contact)
                        || callout.facts().held().containsKey(contact))
                .toList();
        waiting.forEach(callout -> calls.climbs().gone(callout, contact));
    }
}
