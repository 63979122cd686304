package yardlight.escalation.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.reply.Corpus.Entry;

/** Made-up replies of people and machines: what is meant is nearly always understood, and what is not meant never. */
class ReplyCorpusTest {

    private static final double MOST_ARE_UNDERSTOOD = 0.98;

    /**
     * Of a second set, written when the reader was done, it understood 50 of 100 at first, and took one for a shorter wait
     * than was meant. It has learned from those since, but not to this share.
     */
    private static final double SECOND_SET = 0.9;

    private final List<Entry> first = Stream.of("texts.txt", "mail-bodies.txt")
            .flatMap(name -> Corpus.read(name).stream())
            .toList();
    private final List<Entry> second = Corpus.read("texts-2.txt");
    private final List<Entry> all =
            Stream.concat(first.stream(), second.stream()).toList();

    @Test
    void there_are_enough() {
        assertThat(all).hasSizeGreaterThanOrEqualTo(300).extracting(Entry::text).doesNotHaveDuplicates();
    }

    @Test
    void nothing_is_acknowledged_or_put_away_that_was_not_meant() {
        assertThat(all).allSatisfy(entry -> {
            Said said = ReplyReader.read(entry.text());
            if (Corpus.effect(said).isPresent()) {
                assertThat(said).as(entry.remark()).isEqualTo(entry.meant());
            }
        });
    }

    @Test
    void what_was_meant_is_understood() {
        assertUnderstood(first, MOST_ARE_UNDERSTOOD);
        assertUnderstood(second, SECOND_SET);
    }

    private static void assertUnderstood(List<Entry> entries, double share) {
        List<Entry> meant = entries.stream()
                .filter(entry -> !(entry.meant() instanceof Said.Unclear || entry.meant() instanceof Said.Automatic))
                .toList();
        List<Entry> missed = meant.stream()
                .filter(entry -> !ReplyReader.read(entry.text()).equals(entry.meant()))
                .toList();

        assertThat(1 - (double) missed.size() / meant.size())
                .as(missed::toString)
                .isGreaterThanOrEqualTo(share);
    }

    @Test
    void nine_machines_of_ten_are_known_by_their_words() {
        List<Entry> machines = all.stream()
                .filter(entry -> entry.meant() instanceof Said.Automatic)
                .toList();
        List<Entry> missed = machines.stream()
                .filter(entry -> !(ReplyReader.read(entry.text()) instanceof Said.Automatic))
                .toList();

        assertThat((double) missed.size() / machines.size())
                .as(missed::toString)
                .isLessThan(0.1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u0000", "\ud83d", "9999999999999999999", "ok 99999999999", "hold 47 99999999h"})
    void nonsense_is_unclear(String text) {
        assertThat(ReplyReader.read(text)).isEqualTo(new Said.Unclear());
    }

    @Test
    void a_novel_is_not_read() {
        assertThat(ReplyReader.read("ok 47\n".repeat(100_000))).isEqualTo(new Said.Unclear());
    }
}
