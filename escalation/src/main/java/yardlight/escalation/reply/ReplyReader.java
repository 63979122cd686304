package yardlight.escalation.reply;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads what came back. Quotations, signatures and what phones and carriers add are left out first; each sentence that
 * remains is read by itself. The whole means something only if all sentences that mean something agree, and none makes that
 * doubtful.
 */
public final class ReplyReader {

    /** Nobody who answers a text writes more; a machine or a stranger does. */
    private static final int LONGEST = 20_000;

    private static final Pattern SENTENCE_ENDS = Pattern.compile("(?<=[.!?;])(?= |$)|(?<= - )");
    private static final Pattern MARKS_AT_END = Pattern.compile("[.!;\\s-]+$");

    private ReplyReader() {}

    /** @param text of any length, in any case, with any characters; a mail without its header lines */
    public static Said read(String text) {
        if (text.length() > LONGEST || Machines.reacted(Letters.plain(text))) {
            return new Said.Unclear();
        }
        List<String> own = OwnWords.of(text);
        String whole = String.join(" ", own);
        if (Machines.wrote(whole)) {
            return new Said.Automatic();
        }
        return Requests.meaning(own).orElseGet(() -> answer(own, whole));
    }

    private static Said answer(List<String> own, String whole) {
        List<Sentence> sentences = own.stream()
                .map(Spelling::settled)
                .flatMap(line -> Stream.of(SENTENCE_ENDS.split(line)))
                .map(sentence -> MARKS_AT_END.matcher(sentence).replaceAll("").strip())
                .filter(sentence -> !sentence.isEmpty())
                .map(Sentence::of)
                .toList();
        boolean takenBack =
                Vocabulary.TAKE_BACK.matcher(Spelling.settled(whole)).find();
        if (takenBack || sentences.stream().anyMatch(Grammar::doubtful)) {
            return new Said.Unclear();
        }
        return together(sentences);
    }

    private static Said together(List<Sentence> sentences) {
        Set<Said> meant = new LinkedHashSet<>();
        Set<Integer> codes = new LinkedHashSet<>();
        Optional<Said> before = Optional.empty();
        for (Sentence sentence : sentences) {
            Optional<Said> said = Grammar.meaning(sentence);
            Optional<Integer> number = Grammar.onlyNumber(sentence);
            if (said.isPresent() && said.get() instanceof Said.Ok ok) {
                codes.addAll(ok.codes());
            } else if (number.isPresent()) {
                if (!before.equals(Optional.of(new Said.Ok(List.of())))) {
                    return new Said.Unclear();
                }
                codes.add(number.get());
            }
            said.ifPresent(meant::add);
            before = said;
        }
        if (!meant.isEmpty() && meant.stream().allMatch(Said.Ok.class::isInstance)) {
            return new Said.Ok(new ArrayList<>(codes));
        }
        return meant.size() == 1 ? meant.iterator().next() : new Said.Unclear();
    }
}
