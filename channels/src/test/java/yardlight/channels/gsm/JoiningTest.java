package yardlight.channels.gsm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import yardlight.channels.gsm.Joining.Joined;
import yardlight.channels.gsm.Joining.State;

class JoiningTest {

    private static final String ANA = "+15755550101";
    private static final Instant NOW = Instant.parse("2026-11-25T09:13:00Z");

    private static final Joined WAITS = new Joined(State.WAITS, "");
    private static final Joined KEPT = new Joined(State.KEPT_BEFORE, "");

    private final Joining joining = new Joining();

    private static Concatenation part(int reference, int sequence) {
        return new Concatenation(reference, 3, sequence);
    }

    private static Joined whole(String text) {
        return new Joined(State.WHOLE, text);
    }

    @Test
    void gives_the_whole_with_its_last_part_in_whatever_order_they_come() {
        assertThat(joining.add(ANA, part(7, 3), "three", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(7, 1), "one ", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(7, 1), "one ", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(7, 2), "two ", NOW)).isEqualTo(whole("one two three"));
    }

    @Test
    void keeps_texts_of_different_people_and_references_apart() {
        joining.add(ANA, part(7, 1), "one ", NOW);
        joining.add(ANA, part(7, 2), "two ", NOW);

        assertThat(joining.add("+15755550102", part(7, 3), "three", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(8, 3), "three", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, new Concatenation(7, 4, 3), "three", NOW)).isEqualTo(WAITS);
    }

    @Test
    void gives_the_whole_again_until_it_was_kept() {
        add(7, "one ", "two ", "three");

        assertThat(joining.add(ANA, part(7, 2), "two ", NOW)).isEqualTo(whole("one two three"));
    }

    @Test
    void knows_the_parts_of_what_was_kept_when_they_come_once_more() {
        add(7, "one ", "two ", "three");
        joining.kept(ANA, part(7, 3), NOW);

        assertThat(joining.add(ANA, part(7, 1), "one ", NOW)).isEqualTo(KEPT);
        assertThat(joining.add(ANA, part(7, 3), "three", NOW)).isEqualTo(KEPT);
    }

    @Test
    void starts_anew_with_another_text_under_the_same_reference() {
        add(7, "one ", "two ", "three");
        joining.kept(ANA, part(7, 3), NOW);

        assertThat(joining.add(ANA, part(7, 1), "four ", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(7, 2), "two ", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, part(7, 3), "six", NOW)).isEqualTo(whole("four two six"));
    }

    @Test
    void starts_anew_with_the_same_text_long_after() {
        add(7, "one ", "two ", "three");
        joining.kept(ANA, part(7, 3), NOW);

        assertThat(joining.add(
                        ANA, part(7, 1), "one ", NOW.plus(Joining.REPEATED).plusSeconds(1)))
                .isEqualTo(WAITS);
    }

    private void add(int reference, String... parts) {
        for (int i = 0; i < parts.length; i++) {
            joining.add(ANA, part(reference, i + 1), parts[i], NOW);
        }
    }

    @Test
    void does_not_mix_an_old_text_with_a_new_one() {
        joining.add(ANA, part(7, 1), "old ", NOW);
        joining.add(ANA, part(7, 2), "old ", NOW);

        assertThat(joining.add(ANA, part(7, 3), "new", NOW.plus(Joining.LONGEST).plusSeconds(1)))
                .isEqualTo(WAITS);
    }

    @Test
    void holds_no_more_than_so_many() {
        joining.add(ANA, new Concatenation(0, 2, 1), "one", NOW);
        for (int i = 1; i <= Joining.MOST; i++) {
            joining.add(ANA, new Concatenation(i, 2, 1), "one", NOW);
        }

        assertThat(joining.add(ANA, new Concatenation(0, 2, 2), "two", NOW)).isEqualTo(WAITS);
        assertThat(joining.add(ANA, new Concatenation(Joining.MOST, 2, 2), "two", NOW))
                .isEqualTo(whole("onetwo"));
    }
}
