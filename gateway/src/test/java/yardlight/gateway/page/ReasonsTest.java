package yardlight.gateway.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.heartbeat.Clue;
import yardlight.escalation.heartbeat.Evidence;
import yardlight.escalation.heartbeat.Judgement;

/** Why a silence is taken for what it is, as it is kept and as it is read. */
class ReasonsTest {

    @ParameterizedTest
    @EnumSource(Clue.class)
    void are_read_from_the_words_in_which_they_are_kept(Clue clue) {
        List<String> abouts = clue.name().endsWith("QUIET")
                ? List.of("1 box", "12 boxes")
                : List.of(clue == Clue.BATTERY ? "" : "loma-4");
        for (String about : abouts) {
            var evidence = new Evidence(clue, Instant.EPOCH, about);

            assertThat(Evidence.read(evidence.words())).contains(evidence.sentence());
            assertThat(Reasons.of(evidence.words(), Tongues.ENGLISH)).isEqualTo(evidence.words());
            assertThat(Reasons.of(evidence.words(), Tongues.SPANISH))
                    .isNotEqualTo(evidence.words())
                    .doesNotContain("box ", "boxes");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "2 boxes, 2 cajas con la misma línea de energía también callaron",
        "1 box, 1 caja con la misma línea de energía también calló"
    })
    void are_said_in_spanish_of_one_box_or_of_several(String about, String words) {
        Judgement judgement = Judgement.by(List.of(
                new Evidence(Clue.FEED_QUIET, Instant.EPOCH, about),
                new Evidence(Clue.LINK_LIVES, Instant.EPOCH, "pico-2-box")));

        assertThat(Reasons.of(String.join("; ", judgement.reasons()), Tongues.SPANISH))
                .isEqualTo(words + "; la caja pico-2-box habla por el mismo enlace");
    }

    @ParameterizedTest
    @CsvSource({"the hatch is open; call me", "box 7 speaks"})
    void of_a_box_itself_stay_as_they_are(String text) {
        assertThat(Reasons.of(text, Tongues.SPANISH)).isEqualTo(text);
    }
}
