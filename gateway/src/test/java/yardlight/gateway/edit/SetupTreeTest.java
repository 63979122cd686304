package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;

class SetupTreeTest {

    private static final SetupTree TREE = tree("""
            points:
              - {id: tank, site: east, name: EAST TANK}
              - {id: tank, site: west, name: WEST TANK}
            ladders: [{id: night, again: 1}, {id: day}, {id: noon}]
            """);

    @Test
    void tells_points_of_one_name_by_their_site() {
        assertThat(TREE.all(Part.POINTS)).map(Piece::key).containsExactly("east/tank", "west/tank");
        assertThat(TREE.piece(Part.POINTS, "west/tank").node().orElseThrow().nodes())
                .containsEntry("name", new Node.Text("WEST TANK"));
    }

    @Test
    void leaves_a_changed_piece_in_its_place() {
        SetupTree changed = TREE.with(ladder("day", "2"));

        assertThat(changed.all(Part.LADDERS)).map(Piece::key).containsExactly("night", "day", "noon");
        assertThat(changed.piece(Part.LADDERS, "day")).isEqualTo(ladder("day", "2"));
        assertThat(TREE.piece(Part.LADDERS, "day")).isNotEqualTo(ladder("day", "2"));
    }

    @Test
    void puts_a_new_piece_behind_the_others() {
        assertThat(TREE.with(ladder("dawn", "0")).all(Part.LADDERS))
                .map(Piece::key)
                .containsExactly("night", "day", "noon", "dawn");
        assertThat(TREE.with(new Piece(Part.ROSTERS, "crew", ladder("crew", "0").node()))
                        .all(Part.ROSTERS))
                .hasSize(1);
    }

    @Test
    void takes_a_piece_away() {
        SetupTree less = TREE.with(Piece.none(Part.LADDERS, "day"));

        assertThat(less.all(Part.LADDERS)).map(Piece::key).containsExactly("night", "noon");
        assertThat(less.piece(Part.LADDERS, "day").node()).isEmpty();
        assertThat(TREE.with(Piece.none(Part.LADDERS, "nothing")).all(Part.LADDERS))
                .hasSize(3);
    }

    @Test
    void knows_what_stands_at_a_place() {
        assertThat(TREE.at(Part.LADDERS, 1).map(Piece::key)).contains("day");
        assertThat(TREE.at(Part.LADDERS, 3)).isEmpty();
        assertThat(TREE.at(Part.ROSTERS, 0)).isEmpty();
    }

    @Test
    void tells_what_changed_on_the_way_to_another_tree() {
        SetupTree later =
                TREE.with(ladder("day", "3")).with(ladder("dawn", "0")).with(Piece.none(Part.LADDERS, "noon"));

        assertThat(TREE.changes(later))
                .containsExactlyInAnyOrder(ladder("day", "3"), ladder("dawn", "0"), Piece.none(Part.LADDERS, "noon"));
        assertThat(TREE.changes(TREE)).isEmpty();
    }

    private static Piece ladder(String id, String again) {
        return Piece.of(
                Part.LADDERS, new Node.Members(Map.of("id", new Node.Text(id), "again", new Node.Number(again))));
    }

    private static SetupTree tree(String yaml) {
        Document document = Document.setupYaml(yaml);
        assertThat(document.faults()).isEmpty();
        return new SetupTree((Node.Members) document.root());
    }

    @Test
    void is_empty_where_nothing_is_set_up() {
        assertThat(List.of(Part.values()))
                .allMatch(part -> SetupTree.EMPTY.all(part).isEmpty());
        assertThat(SetupTree.EMPTY.piece(Part.SITES, "mesa-9").node()).isEqualTo(Optional.empty());
    }
}
