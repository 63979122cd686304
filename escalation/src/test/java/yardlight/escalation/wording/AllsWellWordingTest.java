package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.cloudhopper.commons.charset.CharsetUtil;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Site;

class AllsWellWordingTest {

    private static final Instant NOW = Instant.parse("2026-11-28T13:00:00Z");
    private static final ZoneId CHICAGO = Made.CHICAGO;
    private static final Wellbeing.Moment ON_TIME = new Wellbeing.Moment(NOW, CHICAGO, Optional.empty());
    private static final Wellbeing.Proof PROVEN =
            new Wellbeing.Proof(List.of(), Optional.of(new Way(1, "sms-mail")), 0);

    @Test
    void all_is_well() {
        var being = new Wellbeing(6, List.of(), 0, List.of(), 0, PROVEN, ON_TIME);

        assertThat(Wording.allsWell(being, Language.EN))
                .isEqualTo("All 6 sites reporting, 0 in alarm. Sat 7:00 AM. Line 1 (sms-mail) proven today.");
        assertThat(Wording.allsWell(being, Language.ES))
                .isEqualTo("Los 6 sitios reportan, 0 en alarma. sab 7:00 AM. Linea 1 (sms-mail) probada hoy.");
    }

    @Test
    void what_is_wrong_is_said_first_the_silent_sites_before_the_alarms() {
        var being = new Wellbeing(
                6,
                List.of(Made.site("Loma 4")),
                0,
                List.of(Made.subject("MESA 9", "WATER TANK", "high"), Made.subject("Loma 4", "BOX", "silent")),
                0,
                PROVEN,
                ON_TIME);

        assertThat(Wording.allsWell(being, Language.EN))
                .isEqualTo("1 of 6 sites silent: LOMA 4. 2 in alarm: MESA 9 WATER TANK HIGH, LOMA 4 BOX SILENT."
                        + " Sat 7:00 AM. Line 1 (sms-mail) proven today.");
    }

    @Test
    void alarms_alone_come_before_the_sites_that_report() {
        var being = new Wellbeing(
                6, List.of(), 2, List.of(Made.subject("MESA 9", "WATER TANK", "high")), 3, PROVEN, ON_TIME);

        assertThat(Wording.allsWell(being, Language.EN))
                .startsWith("1 in alarm: MESA 9 WATER TANK HIGH. All 6 sites reporting. Sat 7:00 AM.")
                .endsWith(" 3 put aside. 2 sites send no heartbeats.");
    }

    @Test
    void an_hour_in_which_nobody_is_called_at_once_is_named_before_what_is_proven() {
        assertThat(Wording.allsWell(uncovered("2026-11-29T03:00:00Z", 41), Language.EN))
                .isEqualTo(
                        "All 6 sites reporting, 0 in alarm. Sat 7:00 AM."
                                + " Nobody hears at once of low, medium at MESA 9 Sat 9:00 PM, 41 more gaps. Line 1 (sms-mail) proven today.");
        assertThat(Wording.allsWell(uncovered("2026-11-29T03:00:00Z", 1), Language.ES))
                .contains(" Nadie se entera enseguida de baja, media en MESA 9 sab 9:00 PM, 1 hueco mas.");
        assertThat(Wording.allsWell(uncovered("2026-11-28T03:00:00Z", 0), Language.EN))
                .contains(" Nobody hears at once of low, medium at MESA 9 until Sat 12:00 PM.");
        assertThat(Wording.allsWell(uncovered("2026-12-05T03:00:00Z", 0), Language.EN))
                .contains(" at MESA 9 Fri 9:00 PM.");
        assertThat(Wording.allsWell(uncovered("2026-12-06T03:00:00Z", 0), Language.EN))
                .contains(" at MESA 9 in 7 days.");
    }

    private static Wellbeing uncovered(String from, int more) {
        Instant begins = Instant.parse(from);
        var gap = new Wellbeing.Uncovered(
                Made.site("Mesa 9"),
                Set.of(Priority.LOW, Priority.MEDIUM),
                begins,
                begins.plusSeconds(15 * 3600),
                more);
        return new Wellbeing(6, List.of(), 0, List.of(), 0, PROVEN, ON_TIME, Optional.of(gap));
    }

    /** Chance: whatever the names and however many of them. */
    @Test
    void it_is_always_one_segment_and_says_how_many_and_when() {
        for (int seed = 0; seed < 10_000; seed++) {
            var random = new Random(seed);
            Wellbeing being = hostile(random);
            Language language = Language.values()[random.nextInt(2)];

            String text = Wording.allsWell(being, language);

            assertThat(CharsetUtil.encode(text, CharsetUtil.CHARSET_GSM))
                    .as("seed %d: %s", seed, text)
                    .hasSizeLessThanOrEqualTo(160);
            assertThat(Segments.of(text).count()).isEqualTo(1);
            assertThat(text)
                    .as("seed %d", seed)
                    .doesNotContain("  ", "|", "\n")
                    .contains(being.alarms().size() + (language == Language.EN ? " in alarm" : " en alarma"))
                    .contains(" 7:00 AM")
                    .endsWith(".");
            if (!being.proof().unproven().isEmpty()) {
                assertThat(text)
                        .as("seed %d", seed)
                        .contains(language == Language.EN ? "Not proven for 30 days: " : "Sin prueba en 30 dias: ");
            }
        }
    }

    @Test
    void a_test_is_always_one_segment_and_can_be_answered() {
        for (int seed = 0; seed < 2_000; seed++) {
            var random = new Random(seed);
            var way = new Way(1 + random.nextInt(99), "x".repeat(1 + random.nextInt(64)));
            var answering = new Answering(
                    Optional.of(1 + random.nextInt(9)),
                    Hostile.answering(random).link());

            String text = Wording.test(way, answering, Language.values()[random.nextInt(2)]);

            assertThat(Gsm7.septets(text)).as(text).isLessThanOrEqualTo(160);
            assertThat(text).contains("OK " + answering.code().orElseThrow(), "Yardlight");
        }
    }

    private static Wellbeing hostile(Random random) {
        List<Site> silent = IntStream.range(0, random.nextInt(4))
                .mapToObj(i -> new Site("site-" + i, Hostile.text(random, 25), CHICAGO, "night"))
                .toList();
        List<Subject> alarms = random.nextInt(3) == 0 ? List.of() : Hostile.subjects(random);
        List<Way> unproven = IntStream.range(0, random.nextInt(12))
                .mapToObj(i -> new Way(i + 1, "x".repeat(1 + random.nextInt(64))))
                .toList();
        Optional<Way> newest = random.nextBoolean() ? Optional.empty() : Optional.of(new Way(1, "y".repeat(64)));
        return new Wellbeing(
                silent.size() + random.nextInt(10_000),
                silent,
                random.nextInt(3) * 1_000,
                alarms,
                random.nextInt(2) * 100,
                new Wellbeing.Proof(unproven, newest, random.nextInt(30)),
                new Wellbeing.Moment(
                        NOW, CHICAGO, random.nextBoolean() ? Optional.empty() : Optional.of(NOW.minusSeconds(9_000))),
                random.nextBoolean() ? Optional.empty() : Optional.of(hostileGap(random)));
    }

    private static Wellbeing.Uncovered hostileGap(Random random) {
        Instant from = NOW.plusSeconds(random.nextInt(30_000_000) - 1_000);
        return new Wellbeing.Uncovered(
                new Site("site", Hostile.text(random, 25), CHICAGO, "night"),
                Set.of(Priority.values()),
                from,
                from.plusSeconds(40_000_000),
                random.nextInt(3) * 10_000);
    }
}
