package yardlight.escalation;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;

/** What is learned of people's lines: from what carriers say of texts, and from what people answer. */
final class Proofs {

    private final Draft draft;

    Proofs(Draft draft) {
        this.draft = draft;
    }

    /** What is known of each of a contact's lines, in their order. */
    List<LineHealth> of(Contact contact) {
        return contact.lines().stream().map(line -> health(contact, line)).toList();
    }

    private LineHealth health(Contact contact, Line line) {
        return draft.health(new LineHealth.Key(contact.id(), line.channel(), line.address()));
    }

    private Optional<LineHealth> health(String contact, int line) {
        return Optional.ofNullable(draft.setup().contacts().get(contact))
                .filter(known -> line < known.lines().size())
                .map(known -> health(known, known.lines().get(line)));
    }

    /** A carrier said what became of a notice by one of its lines. */
    void heard(Notice notice, Stimulus.NoticeFate fate) {
        health(notice.contact(), fate.line()).ifPresent(line -> {
            switch (fate.fate()) {
                case HANDED_OVER -> draft.put(line.handedOver(draft.now()));
                case DELIVERED -> prove(line, line.delivered(draft.now()), "by a receipt");
                case REFUSED, UNCERTAIN -> draft.put(line.troubled(draft.now(), fate.detail()));
            }
        });
    }

    Answer putOff(Stimulus.PutOff said) {
        draft.notice(said.notice())
                .flatMap(notice -> health(notice.contact(), said.line()))
                .ifPresent(line -> draft.put(line.troubled(draft.now(), said.words())));
        return new Answer.Done();
    }

    /** The link in a text was used, and it can have come by no other line. */
    Answer linkUsed(Stimulus.LinkUsed said) {
        return health(said.contact(), said.line())
                .map(line -> proved(said.contact(), List.of(line), "by the link in a text"))
                .orElseGet(() -> new Answer.Tested(List.of()));
    }

    /** The button on the page of a test was pressed. */
    Answer tested(Notice test, String path) {
        List<LineHealth> line =
                Optional.ofNullable(draft.setup().contacts().get(test.contact()))
                        .map(this::of)
                        .orElse(List.of())
                        .stream()
                        .filter(one -> one.test()
                                .filter(by -> by.notice().equals(test.id()))
                                .isPresent())
                        .toList();
        return line.isEmpty()
                ? new Answer.Refusal(
                        Sentence.of("test.newer", "a newer test of this line, or another address, has taken its place"))
                : proved(test.contact(), line, "by an answer to its test, by " + path);
    }

    /**
     * A reply proves the line whose test has the code that it names. Without one it proves the line by which the last text
     * got to the address that it came from, if that was lately: what somebody writes out of the blue says nothing about the
     * way to them.
     */
    Answer replied(Stimulus.Replied said) {
        Contact contact = draft.setup().contacts().get(said.contact());
        if (contact == null) {
            return new Answer.Tested(List.of());
        }
        List<LineHealth> all = of(contact);
        List<LineHealth> tested = all.stream()
                .filter(line -> line.test()
                        .filter(test -> test.open(draft.now()) && said.codes().contains(test.code()))
                        .isPresent())
                .toList();
        if (!tested.isEmpty()) {
            return proved(contact.id(), tested, "by the answer to its test");
        }
        boolean aboutCalls =
                said.codes().isEmpty() || said.codes().stream().anyMatch(code -> code > LineHealth.Test.LAST_CODE);
        return said.lines().stream()
                .filter(place -> aboutCalls && place < all.size())
                .map(all::get)
                .filter(line -> line.answerable(draft.now()))
                .max(Comparator.comparing(line -> line.handedOverAt().orElseThrow()))
                .map(line -> proved(contact.id(), List.of(line), "by a reply"))
                .orElseGet(() -> new Answer.Tested(List.of()));
    }

    private Answer proved(String contact, List<LineHealth> lines, String how) {
        List<LineHealth.Key> tests = lines.stream()
                .filter(line ->
                        line.test().filter(test -> test.open(draft.now())).isPresent())
                .map(LineHealth::key)
                .toList();
        lines.forEach(line -> prove(line, line.answered(draft.now()), how));
        List<LineHealth> all = of(draft.setup().contacts().get(contact));
        return new Answer.Tested(IntStream.range(0, all.size())
                .filter(place -> tests.contains(all.get(place).key()))
                .boxed()
                .toList());
    }

    /** That a line works which was proven anyway is no news for the log; that its test was answered is. */
    private void prove(LineHealth before, LineHealth after, String how) {
        draft.put(after);
        boolean test = before.test().filter(one -> !one.answered()).isPresent()
                && after.test().filter(LineHealth.Test::answered).isPresent();
        if (test || !before.proven(draft.now())) {
            log(before.key(), "proven " + how);
        }
    }

    private void log(LineHealth.Key line, String words) {
        draft.log(
                Entry.What.LINE,
                Map.of("contact", line.contact(), "channel", line.channel()),
                "line by " + line.channel() + " " + words);
    }
}
