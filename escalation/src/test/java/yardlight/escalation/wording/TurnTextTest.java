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

    @Test
    void a_spanish_one_has_its_articles() {
        assertThat(span("2026-11-28T01:00:00Z", "2026-11-28T05:00:00Z", Language.ES))
                .isEqualTo("del vie 27 nov 7:00 PM a 11:00 PM");
        assertThat(span("2026-11-28T01:00:00Z", "2026-11-28T13:00:00Z", Language.ES))
                .isEqualTo("del vie 27 nov 7:00 PM al sáb 7:00 AM");
        assertThat(span("2026-11-23T13:00:00Z", "2026-11-30T13:00:00Z", Language.ES))
                .isEqualTo("del lun 23 nov 7:00 AM al lun 30 nov 7:00 AM");
    }

    @Test
    void a_spanish_text_reads_as_somebody_would_say_it() {
        assertThat(spanish(TurnTold.Kind.TAKEN))
                .isEqualTo("Yardlight, no es alarma: Ana toma su turno del mié 25 nov 10:00 PM al jue 7:00 AM."
                        + " Ya quedo en el rol.");
        assertThat(spanish(TurnTold.Kind.DECLINED))
                .endsWith(": nadie toma su turno del mié 25 nov 10:00 PM al jue 7:00 AM: todos dijeron que no."
                        + " Sigue siendo suyo.");
        assertThat(spanish(TurnTold.Kind.COMES_ON))
                .endsWith(": usted esta de guardia en crew hasta el jue 26 nov 7:00 AM. Antes de usted: Ana.");
        assertThat(spanish(TurnTold.Kind.GOES_OFF))
                .endsWith(": usted ya no esta de guardia en crew. La tiene Ana hasta el jue 26 nov 7:00 AM.");
    }

    private static String spanish(TurnTold.Kind kind) {
        Instant morning = Instant.parse("2026-11-26T13:00:00Z");
        return Wording.turn(new TurnTold(kind, "Ana", "crew", FROM, morning, CHICAGO, 31), Language.ES);
    }

    private static String span(String from, String to) {
        return span(from, to, Language.EN);
    }

    private static String span(String from, String to, Language language) {
        return Wording.span(Instant.parse(from), Instant.parse(to), CHICAGO, language);
    }
}
