package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.SwapNight.ana;
import static yardlight.escalation.SwapNight.person;
import static yardlight.escalation.SwapNight.setup;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.swap.Offer;
import yardlight.escalation.swap.SwapDay;

/** Which night is meant where tours change hands at noon: Ana has the week from Monday 2026-11-23 12:00. */
class SwapLateHandoverScenarioTest {

    private final SwapNight night = new SwapNight(handedOverAtNoon());

    /** On Thursday at 09:00, while the day of the roster is Wednesday for three more hours. */
    @ParameterizedTest
    @CsvSource({"TODAY, 2026-11-26T19:00", "TOMORROW, 2026-11-27T19:00", "WEEKDAY, 2026-11-26T19:00"})
    void a_night_is_that_of_the_date_once_the_one_before_is_over(SwapDay.Kind kind, String from) {
        SwapDay day =
                kind == SwapDay.Kind.WEEKDAY ? SwapDay.weekday(DayOfWeek.THURSDAY, true) : SwapDay.near(kind, true);

        assertThat(asked("2026-11-26T09:00", day).from()).isEqualTo(from);
    }

    @Test
    void a_night_goes_on_until_its_end() {
        assertThat(asked("2026-11-26T06:30", SwapDay.near(SwapDay.Kind.TODAY, true))
                        .to())
                .isEqualTo("2026-11-26T07:00");
    }

    @Test
    void a_day_is_that_of_the_roster_until_the_handover() {
        assertThat(asked("2026-11-26T09:00", SwapDay.near(SwapDay.Kind.TODAY, false))
                        .to())
                .isEqualTo("2026-11-26T12:00");
    }

    private Offer asked(String local, SwapDay day) {
        return ((Answer.Swapped) night.ask(local, day)).offer();
    }

    private static Setup handedOverAtNoon() {
        Setup setup = setup(List.of(), ana(), person("ben", Language.EN));
        Roster crew = setup.rosters().get("crew");
        var late = new Roster(
                crew.id(), crew.zone(), LocalDateTime.parse("2026-11-23T12:00"), crew.tour(), crew.order(), List.of());
        return new Setup(
                List.copyOf(setup.sites().values()),
                List.copyOf(setup.boxes().values()),
                List.of(),
                List.copyOf(setup.contacts().values()),
                List.of(late),
                List.copyOf(setup.ladders().values()));
    }
}
