package yardlight.demo.cast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class CastTest {

    private final Cast cast = Cast.ofTheDemo();

    @Test
    void is_read_out_of_the_setup_document() {
        assertThat(cast.people()).extracting(Person::name).containsExactly("Ana Ruelas", "Ben Tso", "Ida Marsh");
        assertThat(cast.siteNames())
                .containsEntry("tule-creek", "Tule Creek Pump Station")
                .hasSize(4);
        assertThat(cast.siteOfBox())
                .containsEntry("larkspur-box", "larkspur-barn")
                .hasSize(4);
        assertThat(cast.zone()).isEqualTo(ZoneId.of("America/Chicago"));
    }

    @Test
    void has_only_numbers_and_domains_that_belong_to_nobody() {
        assertThat(cast.people()).allSatisfy(person -> {
            assertThat(person.number()).matches("\\+157555501\\d\\d");
            assertThat(person.text()).endsWith(".example");
            assertThat(person.mail()).endsWith(".example");
        });
    }

    @Test
    void finds_whose_phone_or_mail_box_an_address_is() {
        assertThat(cast.owner("5755550102@TXT.example")).map(Person::id).contains("ben");
        assertThat(cast.owner("ida@mesa-lease.example")).map(Person::id).contains("ida");
        assertThat(cast.owner("5755550199@txt.example")).isEmpty();
    }

    @Test
    void refuses_somebody_without_a_phone() {
        String document = "sites: [{id: a, name: A, zone: UTC}]\nboxes: []\n"
                + "contacts: [{id: zoe, name: Zoe, lines: [{channel: mail, address: zoe@lease.example}]}]\n";

        assertThatThrownBy(() -> Cast.read(document))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sms-mail: zoe");
    }
}
