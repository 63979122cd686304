package yardlight.gateway.answer;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.answer.Replies.Outcome;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Names;

/**
 * What waits for one person at the moment at which their text came.
 *
 * @param stops the lines by which nobody is called
 * @param ids every contact with that person's line
 */
record Calls(
        Waiting waiting,
        Set<AlarmKey> stops,
        Set<String> ids,
        Contact person,
        Sentences sentences,
        Setup setup,
        Clocks clocks) {

    /** What the engine takes for a shelf's reason. */
    private static final String BY_TEXT = "by text";

    Outcome ok(List<Integer> codes, Lane lane) {
        List<Alarm> meant = meant(codes);
        return meant.isEmpty() ? said(why(codes)) : acknowledge(meant, lane);
    }

    Outcome all(Lane lane) {
        List<Alarm> meant = Waiting.toldTo(ids, waiting.knownTo(ids));
        return meant.isEmpty() ? said(taken(List.of()).orElse(sentences.nothingWaits())) : acknowledge(meant, lane);
    }

    Outcome hold(Said.Hold hold, Lane lane) {
        List<Integer> codes = hold.code().stream().toList();
        List<Alarm> meant = meant(codes);
        if (meant.isEmpty()) {
            return said(why(codes));
        }
        if (hold.length().isEmpty()) {
            return said(sentences.forHowLong(
                    hold.code().orElseGet(() -> waiting.codesOf(ids).iterator().next())));
        }
        Duration length = hold.length().get();
        Optional<String> refusal = Optional.empty();
        for (Alarm alarm : meant) {
            Answer answer = lane.decide(new Stimulus.Shelve(alarm.key(), length, BY_TEXT, person.id()));
            if (answer instanceof Answer.Refusal refused) {
                refusal = Optional.of(refused.reason());
            }
        }
        Instant until = clocks.now().plus(length);
        return said(refusal.map(sentences::refused)
                .orElseGet(() -> sentences.putAway(names(meant), clocks.read(until, person.zone()))));
    }

    String status() {
        return sentences.status(
                names(waiting.waiting().stream().map(RecordedAlarm::alarm).toList()),
                names(waiting.taken().stream().map(RecordedAlarm::alarm).toList()));
    }

    /** Whom the ladders of the sites call first at this moment. */
    String calledFirst() {
        var names = new Names(setup);
        return sentences.calledFirst(setup.sites().values().stream()
                .map(site -> setup.ladders().get(site.ladder()))
                .filter(ladder -> ladder != null && !ladder.rungs().isEmpty())
                .flatMap(ladder -> ladder.rungs().get(0).call().stream())
                .flatMap(call -> setup.peopleBehind(call, clocks.now()).stream())
                .filter(contact -> !Stop.everywhere(setup.contacts().get(contact), stops))
                .map(names::contact)
                .distinct()
                .toList());
    }

    /** Without a code it can only be the one call that waits for this person. */
    private List<Alarm> meant(List<Integer> codes) {
        if (!codes.isEmpty()) {
            return Waiting.withCodes(codes, waiting.knownTo(ids));
        }
        return waiting.codesOf(ids).size() == 1 ? Waiting.toldTo(ids, waiting.knownTo(ids)) : List.of();
    }

    private String why(List<Integer> codes) {
        Set<Integer> mine = waiting.codesOf(ids);
        if (codes.isEmpty() && !mine.isEmpty()) {
            return sentences.severalWait(mine);
        }
        return taken(codes).orElseGet(() -> codes.isEmpty() ? sentences.nothingWaits() : sentences.noSuchNumber(codes));
    }

    /** Who was faster, if somebody was. */
    private Optional<String> taken(List<Integer> codes) {
        List<Alarm> taken =
                codes.isEmpty() ? Waiting.toldTo(ids, waiting.taken()) : Waiting.withCodes(codes, waiting.taken());
        var names = new Names(setup);
        return taken.stream()
                .findFirst()
                .flatMap(alarm -> alarm.acknowledgedAt()
                        .map(at -> sentences.hasIt(
                                names.contact(alarm.acknowledgedBy().orElseThrow()),
                                clocks.read(at, names.zone(alarm.key().site())))));
    }

    private Outcome acknowledge(List<Alarm> meant, Lane lane) {
        List<Alarm> done =
                meant.stream().filter(alarm -> acknowledged(alarm, lane)).toList();
        return done.isEmpty()
                ? said(sentences.nothingWaits())
                : new Outcome(
                        Replies.oneLine(sentences.youHaveIt(person.name(), names(done))),
                        done.stream().map(Alarm::id).toList());
    }

    private boolean acknowledged(Alarm alarm, Lane lane) {
        var said = new Stimulus.Acknowledge(alarm.key(), person.id(), "text", Optional.empty());
        return lane.decide(said) instanceof Answer.Done;
    }

    private List<String> names(List<Alarm> alarms) {
        var names = new Names(setup);
        return alarms.stream().map(alarm -> names.alarm(alarm)).toList();
    }

    private static Outcome said(String answer) {
        return Outcome.nothing(Replies.oneLine(answer));
    }
}
