package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReferencesTest {

    private final References references = new References();

    private void taken(String... names) {
        for (String name : names) {
            references.taken(name, name);
        }
    }

    @Test
    void are_as_the_centre_wrote_them_where_nothing_is_known() {
        assertThat(references.meant("0911897980")).isEqualTo("0911897980");
    }

    @Test
    void are_the_same_whatever_fills_them_up() {
        taken("0000A1b2", "911897980");

        assertThat(references.meant("a1B2 ")).isEqualTo("0000A1b2");
        assertThat(references.meant("0911897980")).isEqualTo("911897980");
    }

    /** Seen with many centres (jookies/jasmin issues 20 and 24, MavoCz/smscsim issue 4, read). */
    @Test
    void are_found_when_the_receipt_has_them_in_decimal() {
        taken("39f99dd5");

        assertThat(references.meant("0972660181")).isEqualTo("39f99dd5");
    }

    @Test
    void are_found_when_the_receipt_has_them_in_hexadecimal() {
        taken("972660181");

        assertThat(references.meant("39F99DD5")).isEqualTo("972660181");
    }

    @Test
    void are_looked_up_first_in_the_way_that_was_right_before() {
        taken("39f99dd5", "10", "16");

        assertThat(references.meant("10")).isEqualTo("10");
        references.meant("972660181");

        assertThat(references.meant("16")).isEqualTo("10");
    }

    @Test
    void are_written_in_the_way_that_was_right_before_when_they_are_forgotten() {
        taken("39f99dd5");
        references.meant("972660181");

        assertThat(references.meant("255")).isEqualTo("ff");
    }

    @Test
    void of_any_part_are_that_of_its_text() {
        references.taken("a1", "a3");
        references.taken("a2", "a3");
        references.taken("a3", "a3");

        assertThat(references.meant("A1")).isEqualTo("a3");
        assertThat(references.meant("162")).isEqualTo("a3");
    }

    @Test
    void are_no_more_than_so_many() {
        references.taken("f0f0f0", "text");
        for (int i = 0; i < References.MOST; i++) {
            references.taken("x" + i, "x");
        }

        assertThat(references.meant("f0f0f0")).isEqualTo("f0f0f0");
    }

    @Test
    void survive_names_that_are_no_numbers() {
        taken("9b1c7e2a-aaaa-4bbb");

        assertThat(references.meant("9B1C7E2A-AAAA-4BBB")).isEqualTo("9b1c7e2a-aaaa-4bbb");
        assertThat(references.meant("")).isEmpty();
        assertThat(references.meant("9".repeat(100_000))).hasSize(100_000);
    }
}
