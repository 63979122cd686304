package yardlight.gateway.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.escalation.proof.LineHealth;

class MasksTest {

    @ParameterizedTest
    @CsvSource({
        "5755550101@txt.example, ***0101@txt.example",
        "+15755550101, ***0101",
        "ana@mesa.example, ***@mesa.example",
        "a.b@c@mesa.example, ***@mesa.example",
        "555-01, ***",
        "https://push.example/abc|key|auth, ***",
        "'', ***"
    })
    void leave_enough_to_tell_and_too_little_to_use(String address, String shown) {
        assertThat(Masks.of(address)).isEqualTo(shown);
    }

    @Test
    void hide_the_address_in_the_carriers_words_too() {
        LineHealth line = LineHealth.unknown(new LineHealth.Key("ana", "mail", "ana@mesa.example"));
        LineHealth troubled = line.troubled(Instant.EPOCH, "mail: 550 <ana@mesa.example> no such user");

        assertThat(Masks.of(troubled).trouble().orElseThrow().words())
                .isEqualTo("mail: 550 <***@mesa.example> no such user");
        assertThat(Masks.of(line)).isEqualTo(line);
    }

    @ParameterizedTest
    @CsvSource({
        "+15755550101, no route to 15755550101, no route to ***0101",
        "+15755550101, no route to 5755550101, no route to ***0101",
        "5755550101@txt.example, +15755550101 is off, +***0101 is off",
        "ana@Mesa.example, <ANA@mesa.example> is gone, <***@Mesa.example> is gone",
        "555-01, 555-0199 is off, 555-0199 is off"
    })
    void hide_it_however_the_carrier_writes_it(String address, String words, String shown) {
        assertThat(Masks.in(words, address)).isEqualTo(shown);
    }
}
