package yardlight.gateway.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.alarm.AlarmKey;

/** Ids made of names. */
class NamingTest {

    @ParameterizedTest
    @CsvSource({"Mesa 9, mesa-9", "'  Mesa   9! ', mesa-9", "Peña Señor, pena-senor", "-9-, 9", "東, box", "'', box"})
    void are_what_is_left_of_the_name(String name, String id) {
        assertThat(Naming.id(name, Set.of(), "box")).isEqualTo(id);
    }

    @Test
    void get_a_number_when_they_are_taken() {
        assertThat(Naming.id("Mesa 9", Set.of("mesa-9"), "site")).isEqualTo("mesa-9-2");
        assertThat(Naming.id("Mesa 9", Set.of("mesa-9", "mesa-9-2"), "site")).isEqualTo("mesa-9-3");
    }

    @Test
    void are_good_ids_also_when_the_name_is_very_long() {
        assertThat(Naming.id("x".repeat(57) + " y", Set.of(), "site")).matches(AlarmKey.ID);
        assertThat(Naming.id("x".repeat(500), Set.of("x".repeat(58)), "site")).matches(AlarmKey.ID);
    }
}
