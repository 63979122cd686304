package yardlight.gateway.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Trees;

/** A contact on its way from the setup into a form and back. */
class PersonFormTest {

    private static final Piece ANA = Trees.contract().piece(Part.CONTACTS, "ana");

    @Test
    void shows_what_the_setup_holds_and_changes_nothing_by_itself() {
        PersonForm form = PersonForm.of(7, ANA);

        assertThat(form.lines()).extracting(PersonForm.Way::channel).containsExactly("sms-mail", "mail");
        assertThat(form.quiet())
                .containsExactly(new PersonForm.Hours("21:00", "06:00", "high", Set.copyOf(PersonForm.DAYS)));
        assertThat(form.piece("ana", ANA)).isEqualTo(ANA);
    }

    @Test
    void keeps_what_was_typed_however_wrong_it_is() {
        PersonForm form = PersonForm.of("ana", sent());

        assertThat(form.seen()).isEqualTo(7);
        assertThat(form.zone()).isEqualTo("Mars/Base");
        assertThat(form.textsPerHour()).isEqualTo("a few");
        assertThat(form.lines()).containsExactly(new PersonForm.Way("mail", "not an address"));
        assertThat(form.wellDays()).containsExactlyInAnyOrder("mon", "fri");
    }

    private static Map<String, String[]> sent() {
        var sent = new HashMap<String, String[]>();
        Map.of(
                        "seen", "7",
                        "zone", "Mars/Base",
                        "textsPerHour", "a few",
                        "lines", "1",
                        "lines.0.channel", "mail",
                        "lines.0.address", "not an address",
                        "wellAt", "07:00")
                .forEach((name, value) -> sent.put(name, new String[] {value}));
        sent.put("wellDays", new String[] {"mon", "fri"});
        return sent;
    }

    @Test
    void moves_adds_and_takes_away_rows_and_stores_nothing_for_it() {
        PersonForm form = PersonForm.of(7, ANA);

        assertThat(form.after("line-up-1").lines())
                .extracting(PersonForm.Way::channel)
                .containsExactly("mail", "sms-mail");
        assertThat(form.after("line-drop-0").lines())
                .extracting(PersonForm.Way::channel)
                .containsExactly("mail");
        assertThat(form.after("line-add").lines()).hasSize(3);
        assertThat(form.after("quiet-drop-0").quiet()).isEmpty();
        assertThat(form.after("quiet-add").quiet()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"line-up-0", "line-up-9", "line-drop-99", "line-drop-", "", "drop table contact"})
    void a_button_that_is_none_of_ours_changes_nothing(String step) {
        PersonForm form = PersonForm.of(7, ANA);

        assertThat(form.after(step)).isEqualTo(form);
    }

    @Test
    void a_number_of_rows_that_is_none_of_ours_is_bounded() {
        assertThat(PersonForm.of("ana", Map.of("lines", new String[] {"999999999"}))
                        .lines())
                .hasSize(50);
    }

    @Test
    void what_is_left_empty_is_taken_out_and_some_days_are_named_in_their_order() {
        var form = new PersonForm(
                7,
                "ana",
                "",
                "es",
                "",
                "",
                List.of(new PersonForm.Way("mail", "ana@mesa.example")),
                List.of(),
                "07:00",
                Set.of("fri", "mon"));

        assertThat(form.piece("ana", ANA)).isEqualTo(Trees.of("""
            contacts: [{id: ana, language: es, lines: [{channel: mail, address: ana@mesa.example}],
                        allsWell: {at: "07:00", days: [mon, fri]}}]
            """).piece(Part.CONTACTS, "ana"));
    }
}
