package yardlight.escalation.reply;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One sentence, as the words that are in it and what each of them does.
 *
 * @param text without marks at its end
 */
record Sentence(String text, List<Word> words) {

    /**
     * @param number of a {@link Kind#NUMBER}, else 0
     * @param length of a {@link Kind#LENGTH}, else zero
     */
    record Word(Kind kind, int number, Duration length) {}

    private static final String HOUR = "h|hr|hrs|hour|hours|hora|horas";
    private static final String MINUTE = "m|min|mins|minute|minutes|minuto|minutos";

    /** A length, a number with what belongs to it, a word, a sign. */
    private static final Pattern WORD =
            Pattern.compile("(\\d{1,4})(?:[.,](5))? ?(?:(" + HOUR + ")|(" + MINUTE + "))(?!\\p{L})"
                    + "|(\\d+)(?=[ ,]|$|ok)|(\\d[\\p{L}\\d.:/%'-]*)|([\\p{L}][\\p{L}']*)(?=(\\d*))|([#?&+,*$/:-])");

    /** Behind such a word a number counts something. */
    private static final Pattern UNIT = Pattern.compile(
            "^ ?(miles?|mi|millas|km|days?|dias|ft|feet|foot|pies|inch(es)?|psi|bbls?"
                    + "|barrels|barriles|am|pm|percent|%|degrees|volts|v|gal(lons)?|o'clock|years|times|veces|dollars|f|c|gpm|more|mas|head)\\b");

    private static final int LONGEST_CODE = 6;

    static Sentence of(String text) {
        var words = new ArrayList<Word>();
        WORD.matcher(text).results().forEach(found -> words.add(word(found, text)));
        return new Sentence(text, List.copyOf(words));
    }

    private static Word word(MatchResult found, String text) {
        if (found.group(1) != null) {
            return new Word(Kind.LENGTH, 0, length(found));
        }
        if (found.group(5) != null) {
            boolean counts = UNIT.matcher(text.substring(found.end())).find();
            boolean glued = found.start() > 0 && "$:/.-*".indexOf(text.charAt(found.start() - 1)) >= 0;
            return found.group(5).length() > LONGEST_CODE || counts || glued
                    ? plain(Kind.AMOUNT)
                    : new Word(Kind.NUMBER, Integer.parseInt(found.group(5)), Duration.ZERO);
        }
        if (found.group(6) != null) {
            return plain(Kind.AMOUNT);
        }
        String word = found.group(7) == null ? found.group(9) : found.group(7);
        return plain(word.equals(",") ? Kind.COMMA : word.equals("?") ? Kind.QUESTION : Vocabulary.kind(word));
    }

    private static Duration length(MatchResult found) {
        int minutes = found.group(3) == null ? 1 : 60;
        long whole = Long.parseLong(found.group(1)) * minutes;
        return Duration.ofMinutes(found.group(2) == null ? whole : whole + minutes / 2);
    }

    private static Word plain(Kind kind) {
        return new Word(kind, 0, Duration.ZERO);
    }

    /** The letters of its words' kinds, one behind the other. */
    String shape() {
        return words.stream().map(word -> String.valueOf(word.kind().letter())).collect(Collectors.joining());
    }

    List<Integer> numbers(int from, int to) {
        return words.subList(from, to).stream()
                .filter(word -> word.kind() == Kind.NUMBER)
                .map(Word::number)
                .distinct()
                .toList();
    }

    /** All lengths together; empty when there is none. */
    Optional<Duration> length() {
        return words.stream()
                .filter(word -> word.kind() == Kind.LENGTH)
                .map(Word::length)
                .reduce(Duration::plus);
    }
}
