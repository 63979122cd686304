package yardlight.escalation;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.wording.Tiding;

/** What there is to say of a callout at this moment to somebody who was called: what happened last is the news. */
final class Tidings {

    private final Draft draft;

    Tidings(Draft draft) {
        this.draft = draft;
    }

    /** Those of the notice, the most urgent first; what has come up again, or is kept from people, is not among them. */
    List<Tiding> of(Notice notice) {
        return notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .flatMap(callout -> of(callout, notice.contact()).stream())
                .sorted(Comparator.comparing(
                        Tiding::worst, Comparator.comparing(one -> one.alarm(), Texts.WORST_FIRST)))
                .toList();
    }

    /** Empty when there is nothing to say to the contact. */
    private Optional<Tiding> of(Callout callout, String contact) {
        List<Alarm> alarms = alarms(callout);
        if (alarms.isEmpty() || alarms.stream().anyMatch(alarm -> alarm.state().calls() && alarm.active())) {
            return Optional.empty();
        }
        boolean holds = alarms.stream().anyMatch(Alarm::active);
        Optional<Instant> over = holds
                ? Optional.empty()
                : alarms.stream().flatMap(alarm -> alarm.returnedAt().stream()).max(Instant::compareTo);
        Optional<Tiding.Taken> taken = taken(callout, contact)
                .filter(by -> over.filter(by.since()::isBefore).isEmpty());
        if (over.isEmpty() && taken.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Tiding(
                Texts.subject(draft, alarms.stream().min(Texts.WORST_FIRST).orElseThrow()),
                new Causes(draft).apart(alarms).size(),
                alarms.stream().flatMap(alarm -> alarm.occurredAt().stream()).min(Instant::compareTo),
                over,
                taken,
                waits(callout, alarms) ? Optional.of(callout.facts().code()) : Optional.empty()));
    }

    /** Its alarms that nothing newer calls for and nobody has put aside. */
    private List<Alarm> alarms(Callout callout) {
        return callout.facts().alarms().stream()
                .map(draft::alarm)
                .filter(alarm -> alarm.callout().filter(callout.id()::equals).isPresent())
                .filter(alarm -> !alarm.state().withheld())
                .toList();
    }

    private boolean waits(Callout callout, List<Alarm> alarms) {
        return draft.wanted(callout)
                && alarms.stream().anyMatch(alarm -> alarm.state().awaitsAnswer());
    }

    /** Whoever has it knows that. */
    private Optional<Tiding.Taken> taken(Callout callout, String contact) {
        return callout instanceof Callout.Answered answered && !answered.by().equals(contact)
                ? Optional.of(new Tiding.Taken(name(answered.by()), answered.at()))
                : Optional.empty();
    }

    private String name(String by) {
        return Optional.ofNullable(draft.setup().contacts().get(by))
                .map(Contact::name)
                .orElse(by);
    }

    /** Whether a carrier took a text about any of these callouts for the contact: who slept through all of it hears nothing. */
    boolean reached(Notice notice) {
        return notice.callouts().stream()
                .flatMap(id -> draft.callout(id).stream())
                .anyMatch(callout -> IntStream.rangeClosed(1, callout.facts().notices())
                        .mapToObj(number -> callout.id() + "." + number)
                        .anyMatch(id -> arrived(id, notice.contact())));
    }

    private boolean arrived(String id, String contact) {
        return draft.notice(id)
                .filter(notice -> notice.contact().equals(contact))
                .filter(notice -> switch (notice.state()) {
                    case HANDED_OVER, DELIVERED -> true;
                    case BUNDLED ->
                        notice.bundledInto()
                                .filter(other -> arrived(other, contact))
                                .isPresent();
                    case QUEUED, HELD, REFUSED, CANCELLED -> false;
                })
                .isPresent();
    }
}
