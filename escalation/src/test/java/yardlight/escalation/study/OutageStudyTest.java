package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Reads thousands of outages of which the truth is known. How many, and by which seed: {@code -Dyardlight.study.outages},
 * {@code .seed}, {@code .threads}; with {@code -Dyardlight.study.sensitivity=true} also in worlds that are worse than the
 * one that was chosen. The tables go to standard output and stand in docs/silence-study.md.
 */
class OutageStudyTest {

    private static final int OUTAGES = Integer.getInteger("yardlight.study.outages", 2_000);
    private static final long SEED = Long.getLong("yardlight.study.seed", 1);
    private static final int THREADS = Integer.getInteger("yardlight.study.threads", 2);

    private static List<Score> scores;
    private static Tally ours;

    @BeforeAll
    static void play() {
        scores = new Study(Facts.AS_CHOSEN, SEED, OUTAGES, THREADS).play();
        ours = new Tally(scores, OurRules.OURS);
        System.out.println("seed " + SEED + ", " + OUTAGES + " outages");
        System.out.println(Report.of(scores));
    }

    @Test
    void the_first_text_is_right_where_the_evidence_decides() {
        assertThat(ours.firstWhereDecided()).isGreaterThanOrEqualTo(0.95);
    }

    @Test
    void few_first_texts_are_wrong() {
        assertThat(ours.wrong()).isLessThan(0.02);
    }

    /** A box that crashed comes back as after a power cut; then the record has to say that it may have restarted itself. */
    @Test
    void the_record_is_right_once_the_boxes_are_back() {
        assertThat(ours.lastRightOrReboot()).isGreaterThanOrEqualTo(0.99);
    }

    @Test
    void one_cause_is_about_one_text() {
        assertThat(ours.texts()).isBetween(1.0, 1.05);
    }

    @Test
    void the_plain_rules_are_wrong_more_often_and_say_more() {
        for (Tally plain :
                List.of(new Tally(scores, PlainRules.ALWAYS_POWER), new Tally(scores, PlainRules.MAJORITY_BY_LINK))) {
            assertThat(plain.wrong()).isGreaterThan(10 * ours.wrong());
            assertThat(plain.firstWhereDecided()).isLessThan(ours.firstWhereDecided());
            assertThat(plain.lastRight()).isLessThan(ours.lastRight());
        }
        assertThat(new Tally(scores, PlainRules.ALWAYS_POWER).texts()).isGreaterThan(1.5 * ours.texts());
    }

    @Test
    void the_same_seed_gives_the_same_whatever_the_number_of_threads() {
        assertThat(new Study(Facts.AS_CHOSEN, SEED, 100, 1).play())
                .isEqualTo(scores.subList(0, Math.min(100, OUTAGES)));
        assertThat(new Study(Facts.AS_CHOSEN, SEED + 1, 100, THREADS).play())
                .isNotEqualTo(scores.subList(0, Math.min(100, OUTAGES)));
    }

    @Test
    void what_it_depends_on_is_printed_on_demand() {
        if (Boolean.getBoolean("yardlight.study.sensitivity")) {
            System.out.println(
                    "| world | first right where decided | first wrong | right in the end | same, reboot named | texts | false alarms per box and month |");
            System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
            System.out.println(Report.line("as chosen", scores));
            worlds().forEach((what, facts) -> System.out.println(Report.line(
                    what, new Study(facts, SEED, Math.max(1, OUTAGES / 10), THREADS).play())));
        }
    }

    private static Map<String, Facts> worlds() {
        Facts chosen = Facts.AS_CHOSEN;
        var worlds = new LinkedHashMap<String, Facts>();
        worlds.put("half as many batteries", chosen.with(Fact.BATTERIES, 0.25));
        worlds.put("no batteries", chosen.with(Fact.BATTERIES, 0));
        worlds.put("twice the crashes", chosen.with(Fact.CRASHES, 1));
        worlds.put("one battery in five worn", chosen.with(Fact.WORN, 0.2));
        worlds.put("no last gasps", chosen.with(Fact.LAST_GASP, 0));
        worlds.put(
                "no box tells its feed",
                chosen.with(Fact.SENSES, 0).with(Fact.LAST_GASP, 0).with(Fact.WATCHES, 0));
        worlds.put("no heartbeat lost", chosen.with(Fact.LOSS_MOST, 0));
        worlds.put("twice the loss", chosen.with(Fact.LOSS_MOST, 0.6));
        worlds.put("no hub has a battery", chosen.with(Fact.HUBS_BACKED, 0));
        worlds.put("ten times the storms", chosen.with(Fact.STORM_OUTAGES, 3.26));
        worlds.put("no feed serves two sites", chosen.with(Fact.SHARED_FEED, 0));
        worlds.put("one box in ten tells no uptime", chosen.with(Fact.NO_UPTIME, 0.1));
        return worlds;
    }
}
