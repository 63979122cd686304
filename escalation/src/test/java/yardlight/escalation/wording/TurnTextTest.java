package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.setup.Language;

class TurnTextTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant FROM = Instant.parse("2026-11-26T04:00:00Z");
    private static final Instant TO = Instant.parse("2026-12-24T16:00:00Z");

    @ParameterizedTest
    @EnumSource(TurnTold.Kind.class)
    void is_one_segment_with_its_code_however_long_the_names_are(TurnTold.Kind kind) {
        for (Language language : Language.values()) {
            var told = new TurnTold(kind, "Maximiliana ".repeat(8), "r".repeat(64), FROM, TO, CHICAGO, 4711);

            String text = Wording.turn(told, language);

            assertThat(Gsm7.septets(text)).as(text).isBetween(60, 160);
            assertThat(text).startsWith("Yardlight");
            if (kind == TurnTold.Kind.ASKED) {
                assertThat(text).contains("NO 4711");
            }
        }
    }

    @Test
    void a_span_says_no_more_of_its_end_than_it_must() {
        assertThat(span("2026-11-28T01:00:00Z", "2026-11-28T05:00:00Z")).isEqualTo("Fri Nov 27 7:00 PM to 11:00 PM");
        assertThat(span("2026-11-28T01:00:00Z", "2026-11-28T13:00:00Z")).isEqualTo("Fri Nov 27 7:00 PM to Sat 7:00 AM");
        assertThat(span("2026-11-23T13:00:00Z", "2026-11-30T13:00:00Z"))
                .isEqualTo("Mon Nov 23 7:00 AM to Mon Nov 30 7:00 AM");
    }

    private static String span(String from, String to) {
        return Wording.span(Instant.parse(from), Instant.parse(to), CHICAGO, Language.EN);
    }
}
