package yardlight.demo.phone;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.demo.cast.Person;

class TextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TANK HIGH 2:13 AM. Reply OK 47 or http://localhost:8080/a/Zk3_x-9",
                "http://localhost:8080/a/Zk3_x-9",
                "TANK HIGH. Answer at http://localhost:8080/a/Zk3_x-9.",
                "TANK HIGH (http://localhost:8080/a/Zk3_x-9), or reply OK 47",
                "TANK HIGH\nhttp://localhost:8080/a/Zk3_x-9\nReply OK 47"
            })
    void finds_the_link_without_the_punctuation_around_it(String body) {
        assertThat(text(body).link()).contains(URI.create("http://localhost:8080/a/Zk3_x-9"));
    }

    @Test
    void takes_the_first_of_two_links() {
        assertThat(text("https://one.example/a or https://two.example/b").link())
                .contains(URI.create("https://one.example/a"));
    }

    @Test
    void has_no_link_where_there_is_none() {
        assertThat(text("MESA 9 WATER TANK HIGH-HIGH 18.4 ft 2:13 AM. Reply OK 47")
                        .link())
                .isEmpty();
    }

    @Test
    void mentions_a_site_in_whatever_letter_case() {
        assertThat(text("MESA 9 WATER TANK").mentions("Mesa 9")).isTrue();
        assertThat(text("MESA 9 WATER TANK").mentions("Calico Draw")).isFalse();
    }

    private static Text text(String body) {
        Person ana = new Person("ana", "Ana Ruelas", "5755550101@txt.example", "ana@mesa-lease.example");
        return new Text(1, ana, Text.Path.PHONE, Instant.parse("2026-11-25T08:13:00Z"), body, "");
    }
}
