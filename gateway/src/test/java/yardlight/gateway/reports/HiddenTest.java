package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class HiddenTest {

    @Test
    void leaves_of_an_address_that_a_carrier_repeats_enough_to_tell_it_from_others() {
        assertThat(Hidden.of("550 <5755550101@txt.example> no such user", Optional.of(Fixtures.ana())))
                .isEqualTo("550 <***0101@txt.example> no such user");
        assertThat(Hidden.of("taken for +15755550101, id 7", Optional.of(Fixtures.ana())))
                .isEqualTo("taken for +***0101, id 7");
    }

    @Test
    void hides_the_mail_address_of_somebody_who_is_no_longer_set_up() {
        assertThat(Hidden.of("550 cleo@mesa.example is gone", Optional.empty()))
                .isEqualTo("550 ***@mesa.example is gone");
    }

    @Test
    void leaves_the_rest_of_the_carriers_words_alone() {
        assertThat(Hidden.of("250 2.0.0 queued as 20261125081312", Optional.of(Fixtures.ana())))
                .isEqualTo("250 2.0.0 queued as 20261125081312");
    }
}
