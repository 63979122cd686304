package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Site;

/** Chance: whatever the names, numbers and links, what every text promises holds. */
class NoTextGrowsTest {

    private static final int RUNS = 10_000;

    @Test
    void a_text_about_anything_is_one_segment_and_can_be_answered() {
        for (int seed = 0; seed < RUNS; seed++) {
            var random = new Random(seed);
            List<Subject> subjects = Hostile.subjects(random);
            Answering answering = Hostile.answering(random);
            Language language = Language.values()[random.nextInt(2)];

            String text = Wording.text(subjects, answering, language);

            String code = answering.code().map(number -> "OK " + number).orElse("ALL");
            String reply = (language == Language.EN ? ". Reply " : ". Responda ") + code;
            isOneSegment(text, seed);
            assertThat(text)
                    .as("seed %d", seed)
                    .contains(reply)
                    .doesNotContain("|", "\n", "\r", "\f", "  ")
                    .contains(condition(subjects.get(0), language))
                    .contains(" 2:13 AM")
                    .startsWith(start(subjects));
            String rest = text.substring(text.lastIndexOf(reply) + reply.length());
            assertThat(rest)
                    .as("seed %d", seed)
                    .isIn(
                            "",
                            " or " + answering.link().orElse(""),
                            " o " + answering.link().orElse(""));
        }
    }

    /** The size and the round trip are the other library's. */
    private static void isOneSegment(String text, int seed) {
        byte[] septets = CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM);

        assertThat(septets).as("seed %d: %s", seed, text).hasSizeLessThanOrEqualTo(160);
        assertThat(CharsetUtil.decode(septets, CharsetUtil.CHARSET_GSM))
                .as("seed %d", seed)
                .isEqualTo(text);
        assertThat(Segments.of(text).count()).as("seed %d", seed).isEqualTo(1);
    }

    @Test
    void a_name_is_cut_after_a_whole_word_and_only_when_it_must() {
        for (int seed = 0; seed < RUNS; seed++) {
            var random = new Random(seed);
            String site = words(random, 'S');
            String point = words(random, 'P');
            Subject subject = Made.subject(site, point, "high-high");

            String text = Wording.text(List.of(subject), Made.code(47), Language.EN);

            String names = text.substring(0, text.indexOf(" HIGH-HIGH 2:13 AM. Reply OK 47"));
            String shownSite = names.substring(0, names.indexOf(" P"));
            String shownPoint = names.substring(names.indexOf(" P") + 1);
            assertThat(cut(site, shownSite)).as("seed %d: %s", seed, text).isTrue();
            assertThat(cut(point, shownPoint)).as("seed %d: %s", seed, text).isTrue();
            if (site.length() + point.length() <= 127) {
                assertThat(names).as("seed %d", seed).isEqualTo(site + " " + point);
            } else {
                // Whatever is missing, its next word had no place any more.
                assertThat(text.length() + next(site, shownSite))
                        .as("seed %d: %s", seed, text)
                        .isGreaterThan(160);
                assertThat(text.length() + next(point, shownPoint))
                        .as("seed %d: %s", seed, text)
                        .isGreaterThan(160);
            }
        }
    }

    /** What the next word would have cost; a name that is whole has nothing to complain of. */
    private static int next(String name, String shown) {
        if (shown.length() == name.length()) {
            return 1000;
        }
        int end = name.indexOf(' ', shown.length() + 1);
        return (end < 0 ? name.length() : end) - shown.length();
    }

    private static boolean cut(String name, String shown) {
        boolean border = name.equals(shown) || name.startsWith(shown + " ");
        return name.startsWith(shown) && (border || !shown.contains(" ") && shown.length() >= 30);
    }

    private static String words(Random random, char letter) {
        return IntStream.rangeClosed(0, random.nextInt(12))
                .mapToObj(i -> letter + "x".repeat(random.nextInt(random.nextInt(8) == 0 ? 120 : 12)))
                .collect(Collectors.joining(" "))
                .toUpperCase(Locale.ROOT);
    }

    private static String condition(Subject subject, Language language) {
        return Transliteration.gsm(
                Phrases.in(language).condition(subject.alarm().key().condition()));
    }

    /** The first sign of the site, or the count. */
    private static String start(List<Subject> subjects) {
        long sites =
                subjects.stream().map(subject -> subject.site().id()).distinct().count();
        if (sites > 1) {
            return subjects.size() + " alarm";
        }
        Site site = subjects.get(0).site();
        String name = Transliteration.gsm(site.name());
        boolean written = name.codePoints().anyMatch(Character::isLetterOrDigit) && Transliteration.keeps(site.name());
        String first = written ? name : site.id();
        return Transliteration.gsm(
                first.substring(0, first.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT));
    }
}
