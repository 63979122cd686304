package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** Chance: whatever the names, numbers and links, what every text promises holds. */
class NoTextGrowsTest {

    private static final int RUNS = 20_000;
    private static final String[] CONDITIONS = {
        "high-high", "power-off", "comms-loss", "silent", "low", "x".repeat(64), "a-b-".repeat(15), "9"
    };

    @Test
    void a_text_about_anything_is_one_segment_and_can_be_answered() {
        for (int seed = 0; seed < RUNS; seed++) {
            var random = new Random(seed);
            List<Subject> subjects = hostile(random);
            Answering answering = answering(random);
            Language language = Language.values()[random.nextInt(2)];

            String text = Wording.text(subjects, answering, language);

            String code = answering.code().map(number -> "OK " + number).orElse("ALL");
            String reply = (language == Language.EN ? ". Reply " : ". Responda ") + code;
            // The size and the round trip are the other library's.
            byte[] septets = CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM);
            assertThat(septets).as("seed %d: %s", seed, text).hasSizeLessThanOrEqualTo(160);
            assertThat(CharsetUtil.decode(septets, CharsetUtil.CHARSET_GSM))
                    .as("seed %d", seed)
                    .isEqualTo(text);
            assertThat(Segments.of(text).count()).as("seed %d", seed).isEqualTo(1);
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

    private static List<Subject> hostile(Random random) {
        int several = random.nextInt(3) == 0 ? 1 + random.nextInt(70) : 1;
        int sites = 1 + random.nextInt(3);
        var all = new ArrayList<Subject>();
        List<Site> places = IntStream.range(0, sites)
                .mapToObj(
                        i -> new Site("site-" + i, HostileText.any(random, 25), ZoneId.of("America/Chicago"), "night"))
                .toList();
        for (int i = 0; i < several; i++) {
            all.add(subject(random, places.get(random.nextInt(sites))));
        }
        return all;
    }

    private static Subject subject(Random random, Site site) {
        var point = new Point(
                random.nextBoolean() ? "box" : "power-pump",
                site.id(),
                HostileText.any(random, 25),
                Optional.of(HostileText.any(random, 5)),
                Optional.empty(),
                Timing.PLAIN,
                Set.of(),
                true);
        AlarmState[] states = AlarmState.values();
        var measured =
                new Measured(number(random), number(random), Optional.of(HostileText.any(random, 8)), Optional.empty());
        return Made.subject(
                site,
                point,
                CONDITIONS[random.nextInt(CONDITIONS.length)],
                alarm -> alarm.measured(measured)
                        .repeats(random.nextInt(3) == 0 ? random.nextInt(Integer.MAX_VALUE) : random.nextInt(6))
                        .state(states[random.nextInt(states.length)])
                        .returnedAt(random.nextBoolean() ? Optional.of(Made.BEGAN) : Optional.empty()));
    }

    private static Optional<BigDecimal> number(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(BigDecimal.valueOf(random.nextInt(), random.nextInt(6)));
            default ->
                Optional.of(new BigDecimal(new BigInteger(random.nextInt(200), random), random.nextInt(900) - 450));
        };
    }

    private static Answering answering(Random random) {
        return new Answering(
                random.nextInt(4) == 0 ? Optional.empty() : Optional.of(random.nextInt(Integer.MAX_VALUE)),
                switch (random.nextInt(3)) {
                    case 0 -> Optional.empty();
                    case 1 -> Optional.of("https://" + "h".repeat(random.nextInt(150)) + "~");
                    default -> Optional.of(HostileText.any(random, 6));
                });
    }
}
