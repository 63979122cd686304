package yardlight.escalation.reply;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a sentence means by itself, by the shape of its words: see {@link Kind} for the letters. */
final class Grammar {

    /** Numbers with something between them; two of one digit each with a blank may be one of two. */
    private static final String NUMBERS = "[P#]*(?<codes>N(?:[,&A#]+P*N)*)";

    /** Behind a comma a person may tell whatever they like, but not doubt it. */
    private static final String TALK = "(?:,[^!?]*)?";

    /** So may they where what comes next can be nothing but about themselves. */
    private static final String OWN_TALK = "(?:[SGW][^!?]*)?";

    private static final Pattern OK_NUMBERS = Pattern.compile("[FGSWPT,]*[AW][AWFP,]*(?:G{1,2}W[AWFP]*)?" + NUMBERS
            + "[AWFGPTD,]*(?:GN)?(?:" + TALK + "(?:,?!N)?|" + OWN_TALK + ")");

    private static final Pattern NUMBERS_OK =
            Pattern.compile("[FG,]*(?:" + NUMBERS + ",?[FGP]*[AW][AWFGPD]*" + TALK + ")");

    private static final Pattern TWO_NUMBERS = Pattern.compile(
            "[FG,]*[AW][AWF,]*(?<codes>N{2,6})[AWFGPD,]*" + OWN_TALK + "|[FG,]*(?<first>NN)A[AWFGPD,]*");

    private static final Pattern OK_ALL = Pattern.compile("[FGSW,]*[APTFGW,&]*L[AFPGLTW]*N?" + TALK);

    private static final Pattern OK_ALONE = Pattern.compile("[GW,]*A[AWG,]*(?:F?,[GW]+|,?F+,[GSW]+|S[GSW]+|G+D[G]*)?");

    private static final Pattern HOLD =
            Pattern.compile("[AFG,]*H[FP#,]*N?[FGPT,X]?[FGP,]*(?:D+[^!?NLHD]*)?|[FP#]*N[FP]*H[FP]*(?:D+[^!?NLHD]*)?");

    private static final Pattern ONLY_NUMBER = Pattern.compile("N");

    /** Another number is said to be not meant. */
    private static final Pattern EXCLUDED = Pattern.compile("^[^!?]*,!N$");

    private static final Duration LONGEST_HOLD = Duration.ofDays(30);

    private Grammar() {}

    /** Empty when it is talk, or not to be relied on. */
    static Optional<Said> meaning(Sentence sentence) {
        String shape = sentence.shape();
        if (shape.indexOf(Kind.HOLD.letter()) >= 0) {
            return hold(sentence, shape);
        }
        for (Pattern form : List.of(OK_NUMBERS, NUMBERS_OK, TWO_NUMBERS)) {
            Matcher found = form.matcher(shape);
            if (found.matches()) {
                return codes(sentence, found);
            }
        }
        if (OK_ALL.matcher(shape).matches()) {
            return Optional.of(new Said.All());
        }
        boolean alone = OK_ALONE.matcher(shape).matches() && round(sentence.length());
        return alone ? Optional.of(new Said.Ok(List.of())) : Optional.empty();
    }

    private static Optional<Said> codes(Sentence sentence, Matcher found) {
        boolean behind = found.pattern() == TWO_NUMBERS && found.group("first") != null;
        String group = behind ? "first" : "codes";
        List<Integer> codes = sentence.numbers(found.start(group), found.end(group));
        List<Integer> after = sentence.numbers(found.end(group), found.end());
        boolean sure = after.stream().noneMatch(codes::contains)
                && (found.pattern() != TWO_NUMBERS || codes.stream().allMatch(code -> code > 9));
        return sure ? Optional.of(new Said.Ok(codes)) : Optional.empty();
    }

    private static Optional<Said> hold(Sentence sentence, String shape) {
        Matcher found = HOLD.matcher(shape);
        if (!found.matches()) {
            return Optional.empty();
        }
        Optional<Integer> code = sentence.numbers(0, shape.length()).stream().findFirst();
        Optional<Duration> length = sentence.length();
        boolean right = length.stream().noneMatch(one -> one.isZero() || one.compareTo(LONGEST_HOLD) > 0)
                && (code.isPresent()
                        || length.filter(one -> one.toMinutes() % 5 == 0).isPresent());
        return right ? Optional.of(new Said.Hold(code, length)) : Optional.empty();
    }

    /** Nobody counts on 47 minutes: that is a call's number with a word behind it. */
    private static boolean round(Optional<Duration> length) {
        return length.stream().allMatch(one -> one.toMinutes() % 5 == 0);
    }

    /** The number of what was said in the sentence before: {@code ok}, and below it {@code 47}. */
    static Optional<Integer> onlyNumber(Sentence sentence) {
        return ONLY_NUMBER.matcher(sentence.shape()).matches()
                ? Optional.of(sentence.words().get(0).number())
                : Optional.empty();
    }

    /** Something that is said of an answer in the same breath makes it doubtful. */
    static boolean doubtful(Sentence sentence) {
        String shape = sentence.shape();
        boolean answers = shape.matches(".*[AWLH].*");
        boolean excluded = EXCLUDED.matcher(shape).find();
        boolean corrected = sentence.text().startsWith("*");
        return answers && !excluded && shape.matches(".*[!?].*")
                || shape.startsWith("!") && shape.contains("N")
                || corrected;
    }
}
