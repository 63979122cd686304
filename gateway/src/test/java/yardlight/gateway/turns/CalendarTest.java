package yardlight.gateway.turns;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ReloadableResourceBundleMessageSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.roster.Roster;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Tongue;

/** Ana and Ben week about from Monday, November 23 at 7:00; Ben stands in over Christmas. */
class CalendarTest {

    private static final Balance NOTHING = new Balance(List.of(), at("2026-12-01T12:00"));

    @Test
    void says_who_is_on_now_and_until_when() {
        assertThat(sheet(Fixtures.crew(), "2026-12-01").now())
                .isEqualTo("Ben Tully is on call; next handover Mon, Dec 7, 7:00 AM");
    }

    @Test
    void begins_on_the_monday_of_the_day_that_is_asked_for_and_shows_four_weeks() {
        TurnsSheet sheet = sheet(Fixtures.crew(), "2026-12-02");

        assertThat(sheet.weeks()).hasSize(4).allMatch(week -> week.days().size() == 7);
        assertThat(sheet.weeks().get(0).days().get(0).name()).isEqualTo("Mon, Nov 30");
        assertThat(sheet.weeks().get(0).days().get(1).today()).isTrue();
    }

    @Test
    void divides_the_day_of_a_handover() {
        List<TurnsSheet.Part> monday = sheet(Fixtures.crew(), "2026-12-02")
                .weeks()
                .get(0)
                .days()
                .get(0)
                .parts();

        assertThat(monday)
                .containsExactly(
                        new TurnsSheet.Part("Ana Ruelas", "until 7:00 AM", "", "2026-11-30T00:00", 0),
                        new TurnsSheet.Part("Ben Tully", "from 7:00 AM", "", "2026-11-30T07:00", 1));
    }

    @Test
    void marks_who_stands_in_and_for_whom() {
        TurnsSheet.Week christmas = sheet(Fixtures.crew(), "2026-12-21").weeks().get(0);

        assertThat(christmas.days().get(3).parts().get(1))
                .isEqualTo(new TurnsSheet.Part("Ben Tully", "from 7:00 AM", "for Ana Ruelas", "2026-12-24T07:00", 0));
        assertThat(christmas.days().get(4).parts())
                .extracting(TurnsSheet.Part::when)
                .containsExactly("");
    }

    @Test
    void lists_a_swap_until_it_is_over() {
        assertThat(sheet(Fixtures.crew(), "2026-12-01").swaps())
                .extracting(TurnsSheet.Swap::words)
                .containsExactly("Ben Tully from Thu, Dec 24, 7:00 AM to Sat, Dec 26, 7:00 AM");
        var after = new Calendar(Fixtures.crew(), names(), english(), at("2026-12-26T07:00"));
        assertThat(after.of(Optional.empty(), NOTHING, List.of()).swaps()).isEmpty();
    }

    @Test
    void keeps_the_hour_of_handovers_through_the_night_that_the_clock_is_set_back() {
        var nights = new Roster(
                "nights",
                CHICAGO,
                LocalDateTime.parse("2026-10-26T01:30"),
                Duration.ofDays(1),
                List.of("ana", "ben"),
                List.of());

        TurnsSheet.Day sunday =
                sheet(nights, "2026-11-01").weeks().get(0).days().get(6);

        assertThat(sunday.name()).isEqualTo("Sun, Nov 1");
        assertThat(sunday.parts()).extracting(TurnsSheet.Part::when).containsExactly("until 1:30 AM", "from 1:30 AM");
    }

    @Test
    void names_nobody_before_the_first_turn() {
        TurnsSheet.Day sunday =
                sheet(Fixtures.crew(), "2026-11-22").weeks().get(0).days().get(6);

        assertThat(sunday.parts()).extracting(TurnsSheet.Part::who).containsExactly("nobody");
    }

    @Test
    void a_turn_is_swapped_whole_or_a_day_of_it_from_handover_to_handover() {
        var calendar = new Calendar(Fixtures.crew(), names(), english(), at("2026-12-01T12:00"));

        Turn turn = Turn.at(calendar, Optional.of(LocalDateTime.parse("2026-12-24T09:00")));

        assertThat(turn.words())
                .isEqualTo("Ana Ruelas has the turn from Mon, Dec 21, 7:00 AM to Mon, Dec 28, 7:00 AM.");
        assertThat(turn.form(3, Optional.empty()))
                .isEqualTo(new SwapForm(3, "2026-12-21T07:00", "2026-12-28T07:00", "ben"));
        assertThat(turn.form(3, Optional.of(LocalDate.parse("2026-12-24"))))
                .isEqualTo(new SwapForm(3, "2026-12-24T07:00", "2026-12-25T07:00", "ben"));
        assertThat(turn.days()).hasSize(7);
    }

    private static TurnsSheet sheet(Roster roster, String from) {
        return new Calendar(roster, names(), english(), at("2026-12-01T12:00"))
                .of(Optional.of(LocalDate.parse(from)), NOTHING, List.of());
    }

    private static Names names() {
        return new Names(Fixtures.theSetup());
    }

    static Tongue english() {
        var words = new ReloadableResourceBundleMessageSource();
        words.setBasename("classpath:words/turns");
        words.setDefaultEncoding("UTF-8");
        words.setFallbackToSystemLocale(false);
        return new Tongue(words, Locale.ENGLISH);
    }
}
