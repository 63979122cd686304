package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import yardlight.gateway.document.Node;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.Documents;
import yardlight.gateway.setup.SetupReader;

/** An edit that leaves an hour in which nobody is called is stored once somebody has said that they know. */
class GapsAreAskedIT extends EditingGateway {

    GapsAreAskedIT(Desk desk, History history, Lane lane, SetupReader reader) {
        super(desk, history, lane, reader);
    }

    private Piece onlyAna() {
        return Piece.of(Part.LADDERS, with(ladder(), "rungs", new Node.Items(List.of(rung("ana")))));
    }

    @Test
    void it_is_not_stored_until_its_own_gaps_are_agreed_to() {
        int seen = store(Documents.CONTRACT);

        Saved asked = desk.save(seen, List.of(onlyAna()), "owner", "");

        assertThat(asked)
                .isInstanceOfSatisfying(
                        Saved.Opens.class,
                        opens -> assertThat(opens.gaps().sites()).containsOnlyKeys("mesa-9"));
        assertThat(desk.look().version()).isEqualTo(seen);
        assertThat(desk.save(seen, List.of(onlyAna()), "owner", "something else"))
                .isInstanceOf(Saved.Opens.class);
        String sign = ((Saved.Opens) asked).gaps().sign();
        assertThat(desk.save(seen, List.of(onlyAna()), "owner", sign)).isEqualTo(new Saved.Stored(seen + 1));
    }

    @Test
    void what_opens_no_new_gap_is_stored_at_once() {
        int seen = store(Documents.CONTRACT);

        assertThat(desk.save(seen, List.of(again(3)), "owner", "")).isEqualTo(new Saved.Stored(seen + 1));
        assertThat(desk.save(seen + 1, List.of(onlyAna()), "owner")).isEqualTo(new Saved.Stored(seen + 2));
        // The gap is there by now: to rename its people is nothing new, and neither is to close it.
        assertThat(desk.save(seen + 2, List.of(contact("ana", "Ana R.")), "owner", ""))
                .isEqualTo(new Saved.Stored(seen + 3));
        Piece everyone =
                Piece.of(Part.LADDERS, with(ladder(), "rungs", new Node.Items(List.of(rung("ana"), rung("everyone")))));
        assertThat(desk.save(seen + 3, List.of(everyone), "owner", "")).isEqualTo(new Saved.Stored(seen + 4));
    }

    @Test
    void points_are_nothing_that_anybody_is_called_by() {
        int seen = store(Documents.CONTRACT);
        Piece point = Piece.of(
                Part.POINTS, new Node.Members(Map.of("id", new Node.Text("heater"), "site", new Node.Text("mesa-9"))));

        assertThat(desk.opens(List.of(point))).isEmpty();
        assertThat(desk.opens(List.of(onlyAna()))).isPresent();
        assertThat(desk.save(seen, List.of(point), "owner", "")).isEqualTo(new Saved.Stored(seen + 1));
    }

    @Test
    void to_take_an_edit_back_is_an_edit_like_any_other() {
        store(Documents.CONTRACT
                .replace("- {call: [everyone], wait: PT15M, rounds: 3}", "")
                .replace("[\"roster:crew\"]", "[ana]"));
        int seen = desk.look().version();
        Piece ben = Piece.of(Part.LADDERS, with(ladder(), "rungs", new Node.Items(List.of(rung("ben")))));
        assertThat(desk.save(seen, List.of(ben), "owner", "")).isInstanceOf(Saved.Stored.class);

        Saved asked = history.takeBack(seen + 1, "owner", "");

        assertThat(asked).isInstanceOf(Saved.Opens.class);
        assertThat(history.takeBack(
                        seen + 1, "owner", ((Saved.Opens) asked).gaps().sign()))
                .isEqualTo(new Saved.Stored(seen + 2));
    }
}
