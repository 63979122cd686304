package yardlight.gateway.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.SetupTree;
import yardlight.gateway.edit.Trees;
import yardlight.gateway.lines.Leaving.Place;

/** Somebody is taken out of a setup. */
class LeavingTest {

    @Test
    void is_refused_for_the_last_one_on_a_rung_with_the_ladder_and_the_rung() {
        Leaving leaving = Leaving.of(Trees.contract(), "ana");

        assertThat(leaving.reasons()).containsExactly(new Place(Part.LADDERS, "night", 1));
        assertThat(leaving.wishes()).isEmpty();
    }

    @Test
    void takes_them_off_rungs_rosters_and_reliefs_in_the_same_edit() {
        SetupTree tree = Trees.contract();

        Leaving leaving = Leaving.of(tree, "ben");

        assertThat(leaving.reasons()).isEmpty();
        assertThat(leaving.ways()).containsExactly(new Place(Part.ROSTERS, "crew", 0));
        assertThat(leaving.wishes())
                .extracting(Piece::key, piece -> piece.node().isPresent())
                .containsExactly(tuple("ben", false), tuple("crew", true));
        Filled roster = Filled.of(leaving.wishes().get(1));
        assertThat(roster.texts("order")).containsExactly("ana");
        assertThat(roster.has("reliefs")).isFalse();
        assertThat(roster.text("tour")).isEqualTo("P7D");
    }

    @Test
    void leaves_the_other_rungs_as_they_are() {
        SetupTree tree = Trees.of("""
            contacts: [{id: ana}, {id: ben}]
            ladders:
              - {id: night, again: 2, rungs: [{call: [ana, ben], wait: PT7M}, {call: [ben], rounds: 3}]}
            """);

        Leaving leaving = Leaving.of(tree, "ana");

        assertThat(leaving.ways()).containsExactly(new Place(Part.LADDERS, "night", 1));
        Filled ladder = Filled.of(leaving.wishes().get(1));
        assertThat(ladder.text("again")).isEqualTo("2");
        List<Filled> rungs = ladder.each("rungs");
        assertThat(rungs.get(0).texts("call")).containsExactly("ben");
        assertThat(rungs.get(0).text("wait")).isEqualTo("PT7M");
        assertThat(rungs.get(1).text("rounds")).isEqualTo("3");
    }

    @Test
    void is_refused_for_the_last_one_in_a_roster() {
        SetupTree tree = Trees.of("""
            contacts: [{id: ana}, {id: ben}]
            rosters: [{id: crew, order: [ana, ana]}]
            """);

        assertThat(Leaving.of(tree, "ana").reasons()).containsExactly(new Place(Part.ROSTERS, "crew", 0));
    }

    @Test
    void is_refused_for_the_last_one_of_all_while_a_ladder_calls_everyone() {
        SetupTree tree = Trees.of("""
            contacts: [{id: ana}]
            ladders: [{id: night, rungs: [{call: [everyone]}]}]
            """);

        assertThat(Leaving.of(tree, "ana").reasons()).containsExactly(new Place(Part.LADDERS, "night", 1));
    }
}
