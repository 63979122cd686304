package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.SwapNight.ana;
import static yardlight.escalation.SwapNight.asleep;
import static yardlight.escalation.SwapNight.person;
import static yardlight.escalation.SwapNight.relief;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;

/** A turn changes hands: who comes on hears it, and so does who goes off. Ana has the week from Monday 2026-11-23 07:00. */
class HandoversScenarioTest {

    private static final Stimulus HANDOVER = new Stimulus.Handover("crew");

    @Test
    void who_comes_on_hears_until_when_and_who_goes_off_that_they_may_sleep() {
        var night = new SwapNight(SwapNight.setup(List.of(), ana(), person("ben", Language.ES)));

        night.play.at("2026-11-30T07:00", HANDOVER);

        assertThat(night.texts())
                .containsExactly(
                        "ben Yardlight, no es alarma: usted esta de guardia en crew hasta el lun 7 dic 7:00 AM. Antes de"
                                + " usted: Ana Ruelas.",
                        "ana Yardlight, no alarm: you are off call for crew. Ben has it until Mon Dec 7 7:00 AM.");
        assertThat(night.play.log).contains("roster crew: ben is on call");
    }

    @Test
    void the_same_handover_is_told_once() {
        var night = new SwapNight(SwapNight.setup(List.of(), ana(), person("ben", Language.EN)));

        night.play.at("2026-11-30T07:00", HANDOVER);
        night.play.at("2026-11-30T07:05", HANDOVER);

        assertThat(night.texts()).hasSize(2);
    }

    @Test
    void a_swap_is_a_handover_at_its_beginning_and_at_its_end() {
        var night = new SwapNight(SwapNight.setup(
                List.of(relief("2026-11-27T19:00", "2026-11-28T07:00", "ben")), ana(), person("ben", Language.EN)));

        night.play.at("2026-11-27T19:00", HANDOVER);
        night.play.at("2026-11-28T07:00", HANDOVER);

        assertThat(night.texts())
                .containsExactly(
                        "ben Yardlight, no alarm: you are on call for crew until Sat Nov 28 7:00 AM. Before you: Ana Ruelas.",
                        "ana Yardlight, no alarm: you are off call for crew. Ben has it until Sat Nov 28 7:00 AM.",
                        "ana Yardlight, no alarm: you are on call for crew until Mon Nov 30 7:00 AM. Before you: Ben.",
                        "ben Yardlight, no alarm: you are off call for crew. Ana Ruelas has it until Mon Nov 30 7:00 AM.");
    }

    @Test
    void it_wakes_nobody_and_is_dropped_when_it_is_not_so_any_more() {
        Roster nightly = new Roster(
                "crew",
                Fixtures.CHICAGO,
                LocalDateTime.parse("2026-11-23T03:00"),
                Duration.ofHours(2),
                List.of("ana", "ben"),
                List.of());
        var night = new SwapNight(with(nightly, ana(), asleep("ben", Priority.HIGH)));

        night.play.at("2026-11-25T03:00", HANDOVER);
        night.play.at("2026-11-25T05:00", HANDOVER);
        assertThat(night.texts()).allMatch(text -> text.startsWith("ana "));
        night.play.at("2026-11-25T07:00", HANDOVER);
        night.play.at("2026-11-25T07:00", new Stimulus.DeskDue("ben"));

        assertThat(night.texts())
                .filteredOn(text -> text.startsWith("ben "))
                .noneMatch(text -> text.contains("until Wed" + " Nov 25 7:00 AM. Before"));
    }

    /** 2027-03-14 has no 02:30 in Chicago: the turn changes hands at 3:00 AM, the first moment after the gap. */
    @Test
    void on_the_night_that_leaves_the_hour_out_the_first_moment_after_it_is_told() {
        Roster daily = new Roster(
                "crew",
                Fixtures.CHICAGO,
                LocalDateTime.parse("2027-03-01T02:30"),
                Duration.ofDays(1),
                List.of("ana", "ben"),
                List.of());
        var night = new SwapNight(with(daily, ana(), person("ben", Language.EN)));

        night.play.at(java.time.Instant.parse("2027-03-14T07:59:59Z"), HANDOVER);
        List<String> before = night.texts();
        night.play.at(java.time.Instant.parse("2027-03-14T08:00:00Z"), HANDOVER);

        assertThat(before)
                .contains(
                        "ana Yardlight, no alarm: you are on call for crew until Sun Mar 14 3:00 AM. Before you: Ben.");
        assertThat(night.texts().subList(before.size(), night.texts().size()))
                .containsExactly(
                        "ben Yardlight, no alarm: you are on call for crew until Mon Mar 15 2:30 AM. Before you: Ana Ruelas.",
                        "ana Yardlight, no alarm: you are off call for crew. Ben has it until Mon Mar 15 2:30 AM.");
    }

    private static Setup with(Roster roster, Contact... people) {
        Setup setup = SwapNight.setup(List.of(), people);
        return new Setup(
                List.copyOf(setup.sites().values()),
                List.copyOf(setup.boxes().values()),
                setup.points(),
                List.of(people),
                List.of(roster),
                List.copyOf(setup.ladders().values()));
    }
}
