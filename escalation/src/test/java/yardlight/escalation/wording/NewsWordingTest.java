package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.setup.Language;

class NewsWordingTest {

    private static final Instant OVER = Made.BEGAN.plusSeconds(27 * 60);
    private static final Optional<Answering> NOTHING = Optional.empty();
    private static final int RUNS = 5_000;

    @Test
    void says_that_it_is_over_since_when_and_how_long_it_was() {
        assertThat(text(List.of(over(Made.tank(draft -> draft.state(AlarmState.NORMAL)))), NOTHING))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min. No reply needed.");
    }

    @Test
    void says_that_a_latched_alarm_needs_a_reset() {
        assertThat(text(List.of(over(Made.tank(draft -> draft.state(AlarmState.LATCHED_ACKNOWLEDGED)))), NOTHING))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min, needs reset");
    }

    @Test
    void says_how_to_answer_what_waits_for_an_answer() {
        assertThat(text(
                        List.of(over(Made.tank(draft -> draft))),
                        Optional.of(Made.link(47, "https://y.example/a/Ab1"))))
                .isEqualTo("MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min."
                        + " Reply OK 47 or https://y.example/a/Ab1");
    }

    @Test
    void counts_what_it_cannot_name() {
        Tiding tiding = over(Made.tank(draft -> draft.state(AlarmState.NORMAL)));

        String text = text(List.of(tiding, tiding, tiding, tiding, tiding), NOTHING);

        assertThat(text)
                .startsWith("5 back to normal: MESA 9 WATER TANK HIGH-HIGH normal 2:40 AM; MESA 9")
                .endsWith("2:40 AM. No reply needed.");
    }

    @Test
    void names_the_site_of_a_callout_with_many_alarms() {
        Tiding tiding = over(Made.tank(draft -> draft.state(AlarmState.NORMAL)));
        var many = new Tiding(tiding.worst(), 14, tiding.began(), tiding.over(), Optional.empty(), Optional.empty());

        assertThat(text(List.of(many), NOTHING))
                .isEqualTo("MESA 9 14 alarms are back to normal 2:40 AM, after 27 min. No reply needed.");
    }

    @Test
    void goes_after_a_call_whole_or_not_at_all() {
        Tiding tiding = over(Made.tank(draft -> draft.state(AlarmState.NORMAL)));
        String link = "LOMA 4 PUMP OFF 2:41 AM. Reply OK 48 or https://y.example/a/Ab1";

        assertThat(Wording.also(link, tiding, true, Language.EN))
                .contains(link + " Also: MESA 9 WATER TANK HIGH-HIGH normal 2:40 AM");
        assertThat(Wording.also("x".repeat(112), tiding, false, Language.EN)).isPresent();
        assertThat(Wording.also("x".repeat(120), tiding, false, Language.EN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "59, 59 s",
        "60, 1 min",
        "3599, 59 min",
        "3600, 1 h",
        "6540, 1 h 49 min",
        "86400, 1 d",
        "97200, 1 d 3 h",
        "864000, 10 d"
    })
    void reads_lengths_as_people_say_them(long seconds, String words) {
        assertThat(Span.of(Duration.ofSeconds(seconds))).isEqualTo(words);
    }

    @Test
    void is_one_segment_whatever_the_names() {
        for (int seed = 0; seed < RUNS; seed++) {
            var random = new Random(seed);
            Language language = Language.values()[random.nextInt(2)];
            List<Tiding> tidings = Hostile.subjects(random).stream()
                    .map(subject -> tiding(subject, random))
                    .toList();
            Optional<Answering> answering =
                    random.nextBoolean() ? Optional.of(Hostile.answering(random)) : Optional.empty();

            String text = Wording.news(tidings, answering, language);
            Optional<String> also = Wording.also(text, tidings.get(0), random.nextBoolean(), language);

            isOneSegment(text, seed);
            also.ifPresent(longer -> isOneSegment(longer, Integer.MAX_VALUE));
            assertThat(text).as("seed %d", seed).doesNotContain("|", "\n", "\r", "\f");
        }
    }

    private static Tiding tiding(Subject subject, Random random) {
        Optional<Tiding.Taken> taken = random.nextBoolean()
                ? Optional.of(
                        new Tiding.Taken(Hostile.subjects(random).get(0).site().name(), OVER))
                : Optional.empty();
        return new Tiding(
                subject,
                random.nextInt(4) == 0 ? 300 : 1,
                subject.alarm().occurredAt(),
                taken.isEmpty() || random.nextBoolean() ? Optional.of(OVER) : Optional.empty(),
                taken,
                random.nextBoolean() ? Optional.of(1_000_000) : Optional.empty());
    }

    private static void isOneSegment(String text, int seed) {
        byte[] septets = CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM);

        assertThat(septets).as("seed %d: %s", seed, text).hasSizeLessThanOrEqualTo(160);
        assertThat(CharsetUtil.decode(septets, CharsetUtil.CHARSET_GSM))
                .as("seed %d", seed)
                .isEqualTo(text);
    }

    private static Tiding over(Subject subject) {
        return new Tiding(
                subject, 1, subject.alarm().occurredAt(), Optional.of(OVER), Optional.empty(), Optional.empty());
    }

    private static String text(List<Tiding> tidings, Optional<Answering> answering) {
        return Wording.news(tidings, answering, Language.EN);
    }
}
