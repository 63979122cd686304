package yardlight.gateway.ladders;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.util.LinkedMultiValueMap;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Format;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.setup.SetupText;

class LadderFormTest {

    private static final Piece NIGHT = piece("""
            id: night
            rungs:
              - {call: [ana, ben], wait: PT90S, rounds: "2"}
              - {call: [everyone]}
            again: 1
            """);

    private static final Piece NEW = Piece.none(Part.LADDERS, "night");

    @Test
    void shows_what_is_not_written_as_what_it_means() {
        LadderForm form = form();

        assertThat(form.endsWhen()).isEqualTo("acknowledged");
        assertThat(form.rungs())
                .containsExactly(
                        new RungForm("0", List.of("ana", "ben"), "1:30", "2", false),
                        new RungForm("1", List.of("everyone"), "5", "1", false));
    }

    @Test
    void gives_the_piece_back_as_it_was_when_nothing_is_changed() {
        assertThat(form().piece(NIGHT)).isEqualTo(NIGHT);
        assertThat(SetupText.of(Format.YAML, form().piece(NIGHT).node().orElseThrow()))
                .isEqualTo(SetupText.of(Format.YAML, NIGHT.node().orElseThrow()));
    }

    @Test
    void changes_what_was_typed_and_nothing_else() {
        var sent = sent();
        sent.set("wait-1", "10");
        sent.set("rounds-0", "3");
        sent.set("endsWhen", "normal");

        assertThat(LadderForm.read("night", sent).piece(NIGHT)).isEqualTo(piece("""
                        id: night
                        endsWhen: normal
                        rungs:
                          - {call: [ana, ben], wait: PT90S, rounds: 3}
                          - {call: [everyone], wait: PT10M}
                        again: 1
                        """));
    }

    @Test
    void takes_along_what_a_moved_rung_has() {
        LadderForm moved = Moves.apply(form(), "up.1");

        assertThat(moved.piece(NIGHT)).isEqualTo(piece("""
                        id: night
                        rungs:
                          - {call: [everyone]}
                          - {call: [ana, ben], wait: PT90S, rounds: "2"}
                        again: 1
                        """));
    }

    @Test
    void leaves_nobody_out_of_whom_a_rung_calls() {
        var sent = sent();
        sent.put("call-1", List.of("", "ben", ""));

        assertThat(LadderForm.read("night", sent)
                        .piece(NIGHT)
                        .node()
                        .orElseThrow()
                        .nodes()
                        .get("rungs"))
                .asString()
                .contains("[Text[value=ben]]");
    }

    @Test
    void hands_on_what_makes_no_sense_for_the_reader_of_the_setup_to_refuse() {
        var sent = sent();
        sent.set("wait-1", "soon");
        sent.set("rounds-1", "many");
        sent.set("again", "");

        Node.Members made = LadderForm.read("night", sent).piece(NIGHT).node().orElseThrow();

        assertThat(made.nodes().get("again")).isEqualTo(new Node.Text(""));
        assertThat(made.nodes().get("rungs")).asString().contains("soon", "many");
    }

    @Test
    void begins_a_new_one_with_a_rung_that_calls_nobody_yet() {
        LadderForm fresh = LadderForm.fresh("night", 3);

        assertThat(fresh.piece(NEW)).isEqualTo(piece("{id: night, rungs: [{call: []}]}"));
    }

    @ParameterizedTest
    @CsvSource({
        "up.1, 1 0",
        "down.0, 1 0",
        "up.0, 0 1",
        "down.1, 0 1",
        "away.0, 1",
        "add, 0 1 n0",
        "up.7, 0 1",
        "up, 0 1",
        "sideways.1, 0 1",
        "more.1, 0 1",
        "'', 0 1"
    })
    void moves_rungs(String move, String keys) {
        assertThat(Moves.apply(form(), move).rungs()).map(RungForm::key).containsExactly(keys.split(" "));
    }

    @Test
    void gives_each_added_rung_a_key_of_its_own() {
        LadderForm two = Moves.apply(Moves.apply(form(), "add"), "add");

        assertThat(Moves.apply(Moves.apply(two, "away.n0"), "add").rungs())
                .map(RungForm::key)
                .containsExactly("0", "1", "n1", "n0");
    }

    @Test
    void takes_no_more_than_a_person_would_type() {
        var sent = sent();
        for (int i = 0; i < 500; i++) {
            sent.add("rung", "n" + i);
        }
        sent.add("rung", "../x");
        sent.set("wait-0", "9".repeat(10_000));

        LadderForm form = LadderForm.read("night", sent);

        assertThat(form.rungs()).hasSize(100);
        assertThat(form.rungs().get(0).pause()).hasSize(200);
    }

    private static LadderForm form() {
        return LadderForm.of(NIGHT.node().orElseThrow(), "night", 3);
    }

    /** The form as a browser sends it. */
    private static LinkedMultiValueMap<String, String> sent() {
        var sent = new LinkedMultiValueMap<String, String>();
        LadderForm form = form();
        sent.add("seen", "3");
        sent.add("endsWhen", form.endsWhen());
        sent.add("again", form.again());
        for (RungForm rung : form.rungs()) {
            sent.add("rung", rung.key());
            sent.put("call-" + rung.key(), rung.call());
            sent.add("wait-" + rung.key(), rung.pause());
            sent.add("rounds-" + rung.key(), rung.rounds());
        }
        return sent;
    }

    private static Piece piece(String yaml) {
        return Piece.of(Part.LADDERS, (Node.Members) Document.setupYaml(yaml).root());
    }
}
