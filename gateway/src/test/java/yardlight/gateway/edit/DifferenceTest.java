package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Node;

class DifferenceTest {

    private static final String NIGHT = "{\"id\": \"night\", \"rungs\": [{\"call\": [\"ana\"], \"wait\": \"PT5M\"}]}";

    @Test
    void is_none_between_what_says_the_same() {
        assertThat(between(NIGHT, NIGHT)).isEmpty();
        assertThat(between(NIGHT, "{\"rungs\": [{\"wait\": \"PT5M\", \"call\": [\"ana\"]}], \"id\": \"night\"}"))
                .isEmpty();
    }

    @Test
    void is_none_between_a_number_and_the_same_as_a_text() {
        assertThat(between("{\"id\": \"night\", \"again\": 2}", "{\"id\": \"night\", \"again\": \"2\"}"))
                .isEmpty();
    }

    @Test
    void names_the_rung_from_one_on_and_what_it_was() {
        String later = NIGHT.replace("PT5M", "PT10M");

        assertThat(between(NIGHT, later)).containsExactly(new Difference("rungs/1/wait", "PT5M", "PT10M"));
    }

    @Test
    void tells_a_list_of_texts_as_a_whole() {
        String later = NIGHT.replace("[\"ana\"]", "[\"ben\", \"ana\"]");

        assertThat(between(NIGHT, later)).containsExactly(new Difference("rungs/1/call", "ana", "ben, ana"));
    }

    @Test
    void tells_a_rung_that_is_new_or_gone() {
        String more = NIGHT.replace("PT5M\"}", "PT5M\"}, {\"call\": [\"ben\"]}");

        assertThat(between(NIGHT, more)).containsExactly(new Difference("rungs/2/call", "", "ben"));
        assertThat(between(more, NIGHT)).containsExactly(new Difference("rungs/2/call", "ben", ""));
    }

    @Test
    void tells_a_list_of_objects_that_is_new_thing_by_thing() {
        String quiet = "{\"id\": \"ana\", \"quiet\": [{\"from\": \"21:00\", \"days\": [\"mon\"]}]}";

        assertThat(between("{\"id\": \"ana\"}", quiet))
                .containsExactlyInAnyOrder(
                        new Difference("quiet/1/from", "", "21:00"), new Difference("quiet/1/days", "", "mon"));
    }

    @Test
    void tells_a_member_that_is_new_or_gone() {
        String more = NIGHT.replace("{\"id\"", "{\"again\": 1, \"id\"");

        assertThat(between(NIGHT, more)).containsExactly(new Difference("again", "", "1"));
        assertThat(between(more, NIGHT)).containsExactly(new Difference("again", "1", ""));
    }

    @Test
    void tells_a_piece_that_is_new_or_gone_as_a_whole() {
        Piece night = piece(NIGHT);
        Piece none = Piece.none(Part.LADDERS, "night");

        assertThat(Difference.between(none, night)).containsExactly(new Difference("", "", "night"));
        assertThat(Difference.between(night, none)).containsExactly(new Difference("", "night", ""));
        assertThat(Difference.between(none, none)).isEmpty();
    }

    private static List<Difference> between(String before, String after) {
        return Difference.between(piece(before), piece(after));
    }

    private static Piece piece(String json) {
        return Piece.of(Part.LADDERS, (Node.Members) Document.setupJson(json).root());
    }
}
