package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Site;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.RequestState;

class ShutInWordingTest {

    private static final Site LONG = new Site("x", "Ñandú ".repeat(20), ZoneId.of("America/Chicago"), "night");

    @ParameterizedTest
    @MethodSource("all")
    void every_text_is_one_segment_whatever_the_names(Language language, RequestState state, Asker.Kind asker) {
        var told = new ShutInTold(LONG, state, Optional.of(asker), "Wolfeschlegel ".repeat(9), Instant.EPOCH);

        String text = Wording.shutIn(told, language);

        assertThat(Gsm7.septets(text)).as(text).isBetween(40, 160);
        assertThat(Segments.of(text).count()).isEqualTo(1);
    }

    static Stream<Arguments> all() {
        return Stream.of(Language.values())
                .flatMap(language -> Stream.of(RequestState.values())
                        .flatMap(state ->
                                Stream.of(Asker.Kind.values()).map(kind -> Arguments.of(language, state, kind))));
    }
}
