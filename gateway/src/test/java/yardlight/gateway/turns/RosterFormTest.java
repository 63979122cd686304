package yardlight.gateway.turns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Trees;

/** A roster on its way from the setup into a form and back, and the swaps in it. */
class RosterFormTest {

    private static final Piece CREW = Trees.contract().piece(Part.ROSTERS, "crew");

    @Test
    void shows_what_the_setup_holds_and_changes_nothing_by_itself() {
        RosterForm form = RosterForm.of(7, CREW);

        assertThat(form.count() + " " + form.unit()).isEqualTo("1 weeks");
        assertThat(form.order()).containsExactly("ana", "ben");
        assertThat(form.piece("crew", CREW)).isEqualTo(CREW);
    }

    @ParameterizedTest
    @CsvSource({
        "P14D, 2, weeks, P14D",
        "P10D, 10, days, P10D",
        "PT24H, 1, days, PT24H",
        "PT12H, 12, hours, PT12H",
        "PT90M, 90, minutes, PT90M"
    })
    void a_length_reads_in_the_largest_unit_that_is_whole_and_stays_as_it_was_written(
            String written, String count, String unit, String back) {
        Piece piece = with(written);
        RosterForm form = RosterForm.of(1, piece);

        assertThat(form.count()).isEqualTo(count);
        assertThat(form.unit()).isEqualTo(unit);
        assertThat(Filled.of(form.piece("crew", piece)).text("tour")).isEqualTo(back);
    }

    @ParameterizedTest
    @CsvSource({
        "3, weeks, P21D",
        "2, days, P2D",
        "36, hours, PT36H",
        "a, days, a days",
        "0, hours, P0D",
        "1, moons, 1 moons"
    })
    void a_length_that_was_typed_is_written_as_it_is_meant_or_left_for_the_setup_to_refuse(
            String count, String unit, String written) {
        var sent = new HashMap<String, String[]>();
        Map.of("count", count, "unit", unit, "order", "1", "order.0", "ana", "start", "2026-11-23T07:00")
                .forEach((name, value) -> sent.put(name, new String[] {value}));

        Piece piece = RosterForm.of("", sent).piece("days", Piece.none(Part.ROSTERS, "days"));

        assertThat(Filled.of(piece).text("tour")).isEqualTo(written);
    }

    @Test
    void rows_are_added_moved_and_taken_away() {
        RosterForm form = RosterForm.of(7, CREW);

        assertThat(form.after("up-1").order()).containsExactly("ben", "ana");
        assertThat(form.after("drop-0").order()).containsExactly("ben");
        assertThat(form.after("add").order()).hasSize(3);
        assertThat(form.after("up-0")).isEqualTo(form);
        assertThat(form.after("nonsense")).isEqualTo(form);
    }

    @Test
    void a_swap_is_put_behind_the_others_and_taken_off_however_its_times_are_written() {
        var swap = new SwapForm(7, "2026-12-03T07:00", "2026-12-04T07:00", "ben");

        Piece added = swap.added(CREW);
        assertThat(Filled.of(added).each("reliefs"))
                .extracting(relief -> relief.text("from"))
                .containsExactly("2026-12-24T07:00", "2026-12-03T07:00");

        var spelled = new SwapForm(7, "2026-12-03T07:00:00", "2026-12-04T07:00", "ben");
        assertThat(spelled.taken(added)).isEqualTo(CREW);
        assertThat(new SwapForm(7, "2026-12-03T07:00", "2026-12-04T07:00", "ana").taken(added))
                .isEqualTo(added);
    }

    private static Piece with(String tour) {
        return Trees.of("rosters: [{id: crew, start: \"2026-11-23T07:00\", tour: " + tour + ", order: [ana]}]")
                .piece(Part.ROSTERS, "crew");
    }
}
