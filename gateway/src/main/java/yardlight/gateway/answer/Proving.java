package yardlight.gateway.answer;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Told;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.reply.Said;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.SetupInForce;

/** Tells the engine what an answer shows beside what it says: that a line works. */
@Component
class Proving {

    private final KnownLines lines;
    private final Told told;
    private final SetupInForce inForce;
    private final Lane lane;
    private final Clocks clocks;

    Proving(KnownLines lines, Told told, SetupInForce inForce, Lane lane, Clocks clocks) {
        this.clocks = clocks;
        this.lines = lines;
        this.told = told;
        this.inForce = inForce;
        this.lane = lane;
    }

    /** The button behind the link in a notice was pressed. It proves nothing if the notice can have come by several lines. */
    void linkUsed(String notice) {
        told.notice(notice)
                .flatMap(one -> Optional.ofNullable(inForce.setup().contacts().get(one.contact())))
                .ifPresent(contact -> lines.way(notice, contact)
                        .ifPresent(line -> lane.decide(new Stimulus.LinkUsed(contact.id(), line))));
    }

    /**
     * Somebody sent a text. A question can come out of the blue; what takes something on is an answer.
     *
     * @param people the contacts with that address
     * @return the lines whose test it answers, by number and channel
     */
    List<String> replied(List<Contact> people, Sender sender, Said said) {
        return codes(said)
                .map(codes -> people.stream()
                        .filter(this::mayAnswer)
                        .flatMap(person -> answered(person, sender.lines(person), codes).stream())
                        .toList())
                .orElse(List.of());
    }

    /** Whether anything went to them lately that can be answered; else the lane need not be asked. */
    private boolean mayAnswer(Contact person) {
        Instant now = clocks.now();
        return lines.of(person).stream()
                .anyMatch(line -> line.answerable(now)
                        || line.test().filter(test -> test.open(now)).isPresent());
    }

    private List<String> answered(Contact person, List<Integer> from, List<Integer> codes) {
        Answer answer = lane.decide(new Stimulus.Replied(person.id(), from, codes));
        return answer instanceof Answer.Tested found
                ? found.tests().stream()
                        .map(place ->
                                (place + 1) + " (" + person.lines().get(place).channel() + ")")
                        .toList()
                : List.of();
    }

    private static Optional<List<Integer>> codes(Said said) {
        if (said instanceof Said.Ok ok) {
            return Optional.of(ok.codes());
        }
        if (said instanceof Said.Hold hold) {
            return Optional.of(hold.code().stream().toList());
        }
        return said instanceof Said.All ? Optional.of(List.of()) : Optional.empty();
    }
}
