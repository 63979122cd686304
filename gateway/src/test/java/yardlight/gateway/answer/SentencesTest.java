package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.setup.Language;
import yardlight.escalation.wording.Gsm7;

class SentencesTest {

    @ParameterizedTest
    @EnumSource(Language.class)
    void fit_into_one_text_as_they_are(Language language) {
        Sentences sentences = Sentences.in(language);
        Stream.of(
                        sentences.stranger(),
                        sentences.notUnderstood(),
                        sentences.help(),
                        sentences.nothingWaits(),
                        sentences.stopped(true),
                        sentences.stopped(false),
                        sentences.started(0),
                        sentences.started(120),
                        sentences.notStopped(),
                        sentences.forHowLong(47))
                .forEach(sentence -> assertThat(Replies.oneLine(sentence)).doesNotEndWith("..."));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void are_cut_after_a_word_when_there_is_too_much_to_say(Language language) {
        String cut = Replies.oneLine(
                Sentences.in(language).youHaveIt("Ana Ruelas", Collections.nCopies(40, "Mesa 9 WATER TANK high-high")));

        assertThat(Gsm7.septets(cut)).isBetween(120, 160);
        assertThat(cut).matches(".*[a-zA-Z0-9,]\\.\\.\\.");
    }
}
