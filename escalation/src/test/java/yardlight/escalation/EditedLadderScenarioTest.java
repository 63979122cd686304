package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** The owner edits a ladder while it is climbed: nobody is left out because of it, and nobody is called a second time. */
class EditedLadderScenarioTest {

    private static final Rung ANA = rung("ana", 5);
    private static final Rung BEN = rung("ben", 10);
    private static final Rung CLEO = rung("cleo", 5);
    private static final Rung EVERYONE = rung(Rung.EVERYONE, 15);

    @Test
    void a_rung_that_is_taken_out_below_makes_nobody_above_it_miss_their_call() {
        Night night = new Night(setup(ANA, BEN, EVERYONE))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:06", setup(BEN, EVERYONE))
                .run("2026-11-25T03:00");

        assertThat(night.calls())
                .containsExactly("02:00:00 ana", "02:05:00 ben", "02:15:00 ana", "02:15:00 ben", "02:15:00 cleo");
        assertThat(night.timeline())
                .contains("Wed 02:06:00  callout 47 is at rung 1 now: its ladder was changed")
                .contains("Wed 02:30:00  callout 47 exhausted: nobody answered");
    }

    @Test
    void whoever_is_put_below_is_called_at_once_and_then_those_above() {
        Night night = new Night(setup(ANA, BEN))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:06", setup(ANA, CLEO, BEN))
                .run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ben", "02:06:00 cleo", "02:11:00 ben");
    }

    @Test
    void when_the_rung_that_is_called_is_taken_out_the_next_one_is_called_at_once() {
        Night night = new Night(setup(ANA, BEN, CLEO))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:06", setup(ANA, CLEO))
                .run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ben", "02:06:00 cleo");
    }

    @Test
    void a_site_that_is_given_another_ladder_in_mid_climb_climbs_all_of_that() {
        var before = new Ladder("short", Ladder.EndsWhen.ACKNOWLEDGED, List.of(ANA, BEN), 0);
        var other = new Ladder("other", Ladder.EndsWhen.ACKNOWLEDGED, List.of(CLEO, BEN), 0);
        Night night = new Night(setup("short", before, other))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:06", setup("other", before, other))
                .run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ben", "02:06:00 cleo", "02:11:00 ben");
    }

    @Test
    void another_wait_leaves_the_climb_where_it_is() {
        Night night = new Night(setup(ANA, BEN, CLEO))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:06", setup(rung("ana", 20), rung("ben", 20), CLEO))
                .run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ben", "02:15:00 cleo");
    }

    @Test
    void a_rung_that_stands_twice_is_found_where_the_climb_is() {
        Night night = new Night(setup(ANA, BEN, ANA, CLEO))
                .active("2026-11-25T02:00", TANK)
                .setup("2026-11-25T02:01", setup(ANA, ANA, CLEO))
                .run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("02:00:00 ana", "02:05:00 ana", "02:10:00 cleo");
    }

    @Test
    void what_waits_for_the_morning_does_not_pass_over_whoever_was_put_below() {
        Night night = new Night(setup(ANA))
                .active("2026-11-25T02:00", TANK, Priority.MEDIUM)
                .setup("2026-11-25T02:06", setup(BEN, ANA))
                .run("2026-11-25T02:10");

        assertThat(night.calls()).containsExactly("02:06:00 ben");
    }

    private static Rung rung(String call, int minutes) {
        return new Rung(List.of(call), Duration.ofMinutes(minutes), 1);
    }

    private static Setup setup(Rung... rungs) {
        return setup("night", new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(rungs), 0));
    }

    private static Setup setup(String ladder, Ladder... ladders) {
        var cleo = new Contact(
                "cleo",
                "Cleo Hart",
                Fixtures.CHICAGO,
                Language.EN,
                List.of(new Line("sms-mail", "5755550103@txt.example")),
                List.of(),
                20);
        return new Setup(
                        List.of(new Site("mesa-9", "Mesa 9", Fixtures.CHICAGO, ladder)),
                        List.of(),
                        List.of(Fixtures.waterTank()),
                        List.of(Fixtures.ana(), Fixtures.ben(), cleo),
                        List.of(),
                        List.of(ladders))
                .withBox("mesa-9-box", "mesa-9");
    }
}
