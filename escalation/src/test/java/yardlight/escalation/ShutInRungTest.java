package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Setup;

/** Ben is called, then the site is asked, then everybody is called. */
class ShutInRungTest {

    private static final Setup SETUP = ShutInNight.setup(ShutInNight.BY_BOX);

    private static Night turnedOn() {
        return new Night(SETUP)
                .stimulus(
                        "2026-11-28T02:00",
                        new Stimulus.ShutIn("mesa-9", new ShutInSaid.TurnedOn(ShutInNight.BY_BOX.words(), "owner")));
    }

    @Test
    void asks_when_nobody_answers_a_critical_alarm_and_goes_on_calling() {
        Night night =
                turnedOn().active("2026-11-28T02:10", TANK, Priority.CRITICAL).run("2026-11-28T02:21");

        assertThat(night.timeline())
                .anyMatch(line -> line.startsWith("Sat 02:15:00  shut-in request mesa-9.shut-in.")
                        && line.contains("asked for by the ladder, as nobody answered water-tank/high-high"))
                .anyMatch(line -> line.equals("Sat 02:20:00  callout 47 calls rung 3, round 1"));
        assertThat(night.texts())
                .anyMatch(text -> text.words().startsWith("MESA 9 ASKED TO SHUT IN 2:15 AM by the ladder."));
    }

    @Test
    void is_passed_over_without_waiting_when_the_alarm_is_not_critical() {
        Night night = turnedOn().active("2026-11-28T02:10", TANK).run("2026-11-28T02:16");

        assertThat(night.picture().standing("mesa-9").request()).isEmpty();
        assertThat(night.timeline()).contains("Sat 02:15:00  callout 47 calls rung 3, round 1");
    }

    @Test
    void is_passed_over_without_waiting_while_it_is_off() {
        Night night = new Night(SETUP)
                .active("2026-11-28T02:10", TANK, Priority.CRITICAL)
                .run("2026-11-28T02:16");

        assertThat(night.picture().standing("mesa-9").request()).isEmpty();
        assertThat(night.timeline()).contains("Sat 02:15:00  callout 47 calls rung 3, round 1");
    }

    @Test
    void asks_nothing_once_somebody_has_answered() {
        Night night = turnedOn()
                .active("2026-11-28T02:10", TANK, Priority.CRITICAL)
                .stimulus("2026-11-28T02:12", new Stimulus.Acknowledge(TANK, "ben", "page", Optional.empty()))
                .run("2026-11-28T02:30");

        assertThat(night.picture().standing("mesa-9").request()).isEmpty();
    }

    @Test
    void goes_on_to_the_end_when_the_site_says_nothing() {
        Night night =
                turnedOn().active("2026-11-28T02:10", TANK, Priority.CRITICAL).run("2026-11-28T02:21");

        assertThat(night.picture().alarm(ShutInAlarm.at("mesa-9")).active()).isTrue();
        assertThat(night.timeline())
                .anyMatch(line -> line.startsWith("Sat 02:20:00  shut-in request")
                        && line.endsWith("expired as nothing was heard in time"));
    }

    @Test
    void a_rehearsal_shows_it() {
        var question =
                new Rehearsal.Question(TANK, Optional.of(Priority.CRITICAL), Fixtures.at("2026-11-28T02:10"), Map.of());

        List<Rehearsal.Line> lines = Rehearsal.of(SETUP, question);

        assertThat(lines)
                .filteredOn(line -> line.what().equals("asked-to-shut-in"))
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.at()).isEqualTo(Fixtures.at("2026-11-28T02:15"));
                    assertThat(line.words())
                            .isEqualTo("the site is asked to shut in, where that is turned on; goes to box mesa-9-box");
                });
        assertThat(lines).last().extracting(Rehearsal.Line::what).isEqualTo("exhausted");
    }
}
