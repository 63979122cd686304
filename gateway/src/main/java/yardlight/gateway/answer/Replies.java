package yardlight.gateway.answer;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import yardlight.db.alarm.Alarms;
import yardlight.escalation.Answer;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.page.Names;
import yardlight.gateway.setup.SetupInForce;

/** Does what a text that came in asks for, and says in one line what was done. */
@Component
class Replies {

    private static final String UNCLEAR = "Not understood. Send OK and the number in the text, such as OK 47, or ALL.";

    /**
     * @param answer one line for the sender
     * @param acknowledged ids of the alarms
     */
    record Outcome(String answer, List<String> acknowledged) {}

    private final Alarms alarms;
    private final SetupInForce inForce;
    private final Lane lane;

    Replies(Alarms alarms, SetupInForce inForce, Lane lane) {
        this.alarms = alarms;
        this.inForce = inForce;
        this.lane = lane;
    }

    Outcome take(Sender sender, Reply reply) {
        Setup setup = inForce.setup();
        List<Contact> people = sender.among(setup);
        if (people.isEmpty()) {
            return nothing("This number is not known here; nothing was done.");
        }
        var waiting = Waiting.of(alarms.current());
        Set<String> ids = people.stream().map(Contact::id).collect(Collectors.toSet());
        List<Alarm> meant = switch (reply.kind()) {
            case ONE -> waiting.withCode(reply.code().orElseThrow());
            case ONLY -> waiting.codesOf(ids).size() == 1 ? waiting.toldTo(ids) : List.of();
            case ALL -> waiting.toldTo(ids);
            case UNCLEAR -> List.of();
        };
        return meant.isEmpty() ? nothing(why(reply, waiting.codesOf(ids))) : acknowledge(meant, people.get(0), setup);
    }

    private Outcome acknowledge(List<Alarm> meant, Contact by, Setup setup) {
        List<Alarm> done =
                meant.stream().filter(alarm -> acknowledged(alarm, by)).toList();
        var names = new Names(setup);
        String what = done.stream().map(alarm -> names.alarm(alarm.key())).collect(Collectors.joining(", "));
        return done.isEmpty()
                ? nothing("Nothing waits for an answer any more.")
                : new Outcome(
                        "You have it, " + by.name() + ": " + what + ".",
                        done.stream().map(Alarm::id).toList());
    }

    private boolean acknowledged(Alarm alarm, Contact by) {
        var said = new Stimulus.Acknowledge(alarm.key(), by.id(), "text", Optional.empty());
        return lane.decide(said) instanceof Answer.Done;
    }

    private static String why(Reply reply, Set<Integer> codes) {
        return switch (reply.kind()) {
            case ONE -> "Nothing with the number " + reply.code().orElseThrow() + " waits for an answer.";
            case ONLY ->
                codes.isEmpty()
                        ? "Nothing waits for an answer."
                        : "Several things wait: send OK and one of " + numbers(codes) + ", or ALL.";
            case ALL -> "Nothing waits for an answer.";
            case UNCLEAR -> UNCLEAR;
        };
    }

    private static String numbers(Set<Integer> codes) {
        return codes.stream().sorted().map(Object::toString).collect(Collectors.joining(", "));
    }

    private static Outcome nothing(String answer) {
        return new Outcome(answer, List.of());
    }
}
