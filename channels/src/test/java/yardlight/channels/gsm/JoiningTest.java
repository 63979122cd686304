package yardlight.channels.gsm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class JoiningTest {

    private static final String ANA = "+15755550101";
    private static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");

    private final Joining joining = new Joining();

    private static Concatenation part(int reference, int sequence) {
        return new Concatenation(reference, 3, sequence);
    }

    @Test
    void gives_the_whole_with_its_last_part_in_whatever_order_they_come() {
        assertThat(joining.add(ANA, part(7, 3), "three", NOW)).isEmpty();
        assertThat(joining.add(ANA, part(7, 1), "one ", NOW)).isEmpty();
        assertThat(joining.add(ANA, part(7, 1), "one ", NOW)).isEmpty();
        assertThat(joining.add(ANA, part(7, 2), "two ", NOW)).contains("one two three");
    }

    @Test
    void keeps_texts_of_different_people_and_references_apart() {
        joining.add(ANA, part(7, 1), "one ", NOW);
        joining.add(ANA, part(7, 2), "two ", NOW);

        assertThat(joining.add("+15755550102", part(7, 3), "three", NOW)).isEmpty();
        assertThat(joining.add(ANA, part(8, 3), "three", NOW)).isEmpty();
        assertThat(joining.add(ANA, new Concatenation(7, 4, 3), "three", NOW)).isEmpty();
    }

    @Test
    void gives_the_whole_again_until_it_was_kept_and_then_starts_anew() {
        joining.add(ANA, part(7, 1), "one ", NOW);
        joining.add(ANA, part(7, 2), "two ", NOW);
        joining.add(ANA, part(7, 3), "three", NOW);

        assertThat(joining.add(ANA, part(7, 3), "three", NOW)).contains("one two three");
        joining.done(ANA, part(7, 3));

        assertThat(joining.add(ANA, part(7, 3), "three", NOW)).isEmpty();
    }

    @Test
    void does_not_mix_an_old_text_with_a_new_one() {
        joining.add(ANA, part(7, 1), "old ", NOW);
        joining.add(ANA, part(7, 2), "old ", NOW);

        assertThat(joining.add(ANA, part(7, 3), "new", NOW.plus(Joining.LONGEST).plusSeconds(1)))
                .isEmpty();
    }

    @Test
    void holds_no_more_than_so_many() {
        joining.add(ANA, new Concatenation(0, 2, 1), "one", NOW);
        for (int i = 1; i <= Joining.MOST; i++) {
            joining.add(ANA, new Concatenation(i, 2, 1), "one", NOW);
        }

        assertThat(joining.add(ANA, new Concatenation(0, 2, 2), "two", NOW)).isEmpty();
        assertThat(joining.add(ANA, new Concatenation(Joining.MOST, 2, 2), "two", NOW))
                .contains("onetwo");
    }
}
