package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.gateway.document.Node;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupReader;

class HistoryIT extends EditingGateway {

    HistoryIT(Desk desk, History history, Lane lane, SetupReader reader) {
        super(desk, history, lane, reader);
    }

    @Test
    void tells_the_newest_edits_with_who_and_what() {
        int seen = store(Documents.CONTRACT);
        desk.save(seen, List.of(again(2)), "ben");
        desk.save(seen + 1, List.of(contact("ben", "Benjamin Tully")), "owner");

        List<History.Edit> edits = history.newest(Integer.MAX_VALUE, 2);

        assertThat(edits).map(History.Edit::version).containsExactly(seen + 2, seen + 1);
        assertThat(edits).map(History.Edit::by).containsExactly("owner", "ben");
        assertThat(edits.get(0).changes())
                .containsExactly(new Saved.Changed(
                        Part.CONTACTS, "ben", List.of(new Difference("name", "Ben Tully", "Benjamin Tully"))));
        assertThat(history.newest(seen + 2, 1)).containsExactly(edits.get(1));
        assertThat(history.of(Part.LADDERS, "night", 2)).containsExactly(edits.get(1));
    }

    @Test
    void takes_an_edit_back_and_leaves_what_came_after_it() {
        int seen = store(Documents.CONTRACT);
        desk.save(seen, List.of(again(2)), "ben");
        desk.save(seen + 1, List.of(contact("ben", "Benjamin Tully")), "owner");

        Saved saved = history.takeBack(seen + 1, "owner", "");

        assertThat(saved).isEqualTo(new Saved.Stored(seen + 3));
        assertThat(desk.look().tree().piece(Part.LADDERS, "night")).isEqualTo(again(1));
        assertThat(desk.look().tree().piece(Part.CONTACTS, "ben")).isEqualTo(contact("ben", "Benjamin Tully"));
        assertThat(history.newest(Integer.MAX_VALUE, 1).get(0).changes())
                .containsExactly(new Saved.Changed(Part.LADDERS, "night", List.of(new Difference("again", "2", "1"))));
    }

    @Test
    void takes_back_that_a_piece_was_added_or_taken_away() {
        int seen = store(Documents.CONTRACT + "  - {id: day, rungs: [{call: [ben]}]}\n");
        Piece day = desk.look().tree().piece(Part.LADDERS, "day");
        desk.save(seen, List.of(Piece.none(Part.LADDERS, "day")), "ben");

        history.takeBack(seen + 1, "owner", "");
        assertThat(desk.look().tree().piece(Part.LADDERS, "day")).isEqualTo(day);

        history.takeBack(seen + 2, "owner", "");
        assertThat(desk.look().tree().piece(Part.LADDERS, "day").node()).isEmpty();
    }

    @Test
    void does_not_take_back_what_was_changed_again_since() {
        int seen = store(Documents.CONTRACT);
        desk.save(seen, List.of(again(2)), "owner");
        desk.save(seen + 1, List.of(again(3)), "ben");

        Saved saved = history.takeBack(seen + 1, "owner", "");

        assertThat(saved).isInstanceOfSatisfying(Saved.Overtaken.class, overtaken -> {
            assertThat(overtaken.by()).isEqualTo("ben");
            assertThat(overtaken.changes())
                    .containsExactly(
                            new Saved.Changed(Part.LADDERS, "night", List.of(new Difference("again", "2", "3"))));
        });
        assertThat(desk.look().version()).isEqualTo(seen + 2);
    }

    @Test
    void does_not_take_back_what_others_rely_on_by_now() {
        int seen = store(Documents.CONTRACT);
        Piece day = Piece.of(Part.LADDERS, with(ladder(), "id", new Node.Text("day")));
        desk.save(seen, List.of(day), "owner");
        Piece site = desk.look().tree().piece(Part.SITES, "mesa-9");
        Piece moved = Piece.of(Part.SITES, with(site.node().orElseThrow(), "ladder", new Node.Text("day")));
        desk.save(seen + 1, List.of(moved), "owner");

        Saved saved = history.takeBack(seen + 1, "owner", "");

        assertThat(saved).isInstanceOf(Saved.Wrong.class);
        assertThat(desk.look().tree().piece(Part.LADDERS, "day")).isEqualTo(day);
    }

    @Test
    void knows_no_edit_that_has_nothing_before_it() {
        store(Documents.CONTRACT);

        assertThatThrownBy(() -> history.takeBack(1, "owner", "")).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> history.takeBack(1_000_000, "owner", "")).isInstanceOf(Problem.class);
        assertThatThrownBy(() -> history.takeBack(0, "owner", "")).isInstanceOf(Problem.class);
    }

    @Test
    void is_empty_below_the_first() {
        assertThat(history.newest(1, 5)).isEmpty();
    }
}
