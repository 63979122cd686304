package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordsTest {

    @Test
    void keep_a_short_line_as_the_headline() {
        assertThat(Words.headline("MESA 9 HIGH", 60)).isEqualTo("MESA 9 HIGH");
        assertThat(Words.headline("x".repeat(60), 60)).hasSize(60);
    }

    @Test
    void end_the_headline_between_two_words() {
        assertThat(Words.headline("one two three", 7)).isEqualTo("one two");
        assertThat(Words.headline("one two three", 8)).isEqualTo("one two");
        assertThat(Words.headline("one two three", 6)).isEqualTo("one");
    }

    @Test
    void cut_a_first_word_that_is_too_long_but_no_character() {
        assertThat(Words.headline("x".repeat(61), 60)).isEqualTo("x".repeat(60));
        assertThat(Words.headline("x".repeat(59) + "\ud83d\udca7", 60)).isEqualTo("x".repeat(59));
    }

    @Test
    void make_one_line_of_several_in_the_headline() {
        assertThat(Words.headline("  one\n two\t\tthree ", 60)).isEqualTo("one two three");
    }
}
