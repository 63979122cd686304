package yardlight.escalation;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Contact;

/** Sends a text by exactly one line, to see whether it gets there. Nobody is woken by it, and nobody flooded. */
final class LineTests {

    /** Between two tests of one line. */
    private static final Duration PAUSE = Duration.ofMinutes(10);

    private final Draft draft;
    private final Notices notices;

    LineTests(Draft draft, Notices notices) {
        this.draft = draft;
        this.notices = notices;
    }

    Answer test(Stimulus.TestLine asked) {
        Contact contact = draft.setup().contacts().get(asked.contact());
        if (contact == null
                || asked.line() < 0
                || asked.line() >= contact.lines().size()) {
            return new Answer.Refusal("there is no such line: " + asked.contact() + ", line " + (asked.line() + 1));
        }
        List<LineHealth> lines = new Proofs(draft).of(contact);
        LineHealth line = lines.get(asked.line());
        Optional<Sentence> objection = objection(contact, asked.line(), line);
        Optional<Integer> code = code(lines, asked.line());
        if (objection.isPresent() || code.isEmpty()) {
            return new Answer.Refusal(
                    objection.orElse(Sentence.of("test.many", "too many tests wait for an answer of theirs")));
        }
        String id = contact.id() + ".test." + (asked.line() + 1) + "-"
                + Long.toString(draft.now().getEpochSecond(), 36);
        draft.put(line.tested(new LineHealth.Test(id, code.get(), draft.now(), false)));
        Notice notice = Notice.other(Purpose.TEST, id, contact.id(), draft.now(), asked.line());
        draft.log(
                notice,
                asked.by() + " tests line " + (asked.line() + 1) + " by "
                        + line.key().channel());
        notices.send(notice, asked.line());
        return new Answer.Done();
    }

    private Optional<Sentence> objection(Contact contact, int place, LineHealth line) {
        Instant now = draft.now();
        var carriers = new Carriers(draft);
        if (carriers.stopped(contact, contact.lines().get(place))) {
            return Optional.of(Sentence.of(
                    "test.stopped",
                    "they want nothing more by this line; it can be tested once they sent START by it"));
        }
        Optional<Instant> quiet = contact.heldUntil(Priority.LOW, now);
        Optional<Instant> again = line.test().map(test -> test.at().plus(PAUSE)).filter(now::isBefore);
        if (again.isPresent()) {
            return Optional.of(Sentence.of(
                    "test.again",
                    "this line was tested a moment ago; it can be tested again at " + again.get(),
                    again.get()));
        }
        if (quiet.isPresent()) {
            return Optional.of(Sentence.of("test.quiet", "they have quiet hours until " + quiet.get(), quiet.get()));
        }
        if (draft.desk(contact.id())
                .room(Priority.LOW, now, notices.restraint(contact.id()))
                .isAfter(now)) {
            return Optional.of(Sentence.of("test.limit", "they have had as many texts as their limit allows for now"));
        }
        String channel = line.key().channel();
        return carriers.down(channel)
                ? Optional.of(Sentence.of("test.down", channel + " is down; nothing goes out by it", channel))
                : Optional.empty();
    }

    /** The number of the line, or the next one that no open test of theirs has. */
    private Optional<Integer> code(List<LineHealth> lines, int place) {
        Set<Integer> taken = lines.stream()
                .flatMap(line -> line.test().stream())
                .filter(test -> test.open(draft.now()))
                .map(LineHealth.Test::code)
                .collect(Collectors.toSet());
        return IntStream.range(place, place + LineHealth.Test.LAST_CODE)
                .map(next -> next % LineHealth.Test.LAST_CODE + 1)
                .boxed()
                .filter(next -> !taken.contains(next))
                .findFirst();
    }
}
