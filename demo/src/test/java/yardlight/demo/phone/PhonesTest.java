package yardlight.demo.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.demo.carrier.Letter;
import yardlight.demo.cast.Cast;

class PhonesTest {

    private static final Instant NIGHT = Instant.parse("2026-11-25T08:13:00Z");

    private final Phones phones = new Phones(Cast.ofTheDemo(), InstantSource.fixed(NIGHT));

    @Test
    void sort_letters_by_person_and_path_and_keep_their_order() {
        phones.take(new Letter("5755550102@txt.example", "", "first", "<1@y>"));
        phones.take(new Letter("ben@mesa-lease.example", "Alarm", "second", "<2@y>"));

        assertThat(phones.texts())
                .extracting(text -> text.number() + " " + text.person().id() + " " + text.path() + " " + text.body())
                .containsExactly("1 ben PHONE first", "2 ben MAIL second");
        assertThat(phones.texts()).extracting(Text::at).containsOnly(NIGHT);
    }

    @Test
    void tell_their_listeners_what_is_kept_already() {
        List<Integer> kept = new ArrayList<>();
        phones.onArrival(text -> kept.add(phones.texts().size()));

        phones.take(new Letter("5755550101@txt.example", "", "tank", "<1@y>"));

        assertThat(kept).containsExactly(1);
    }

    @Test
    void refuse_a_letter_to_nobody() {
        assertThatThrownBy(() -> phones.take(new Letter("5755550199@txt.example", "", "tank", "<1@y>")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(phones.know("5755550199@txt.example")).isFalse();
    }
}
