package yardlight.escalation.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.setup.Language;

/** The text about a sign-in, to the letter. */
class SignInWordingTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant AT = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void says_who_from_where_when_and_what_to_do() {
        var browser = new SignIn("ana", false, "198.51.100.7");
        var program = new SignIn("ana", true, "198.51.100.7");

        assertThat(Wording.signIn(browser, true, AT, CHICAGO, Language.EN))
                .isEqualTo("Yardlight, no alarm: ana signed in with a new browser from 198.51.100.7, Wed 2:13 AM."
                        + " Not you? Change your password.");
        assertThat(Wording.signIn(program, false, AT, CHICAGO, Language.EN))
                .isEqualTo("Yardlight, no alarm: ana signed in with a new program from 198.51.100.7, Wed 2:13 AM."
                        + " Not known to you? End their sessions.");
        assertThat(Wording.signIn(browser, true, AT, CHICAGO, Language.ES))
                .isEqualTo("Yardlight, no es alarma: ana entro con un navegador nuevo desde 198.51.100.7, mié 2:13 AM."
                        + " ¿No fue usted? Cambie su contraseña.");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void is_one_segment_whatever_the_login_and_the_address_also_for_many(Language language) {
        var longest = new SignIn("a".repeat(64), true, "2001:0db8:1111:2222:3333:4444:5555:6666%eth0");

        for (boolean own : new boolean[] {true, false}) {
            String text = Wording.signIn(longest, own, AT, CHICAGO, language);
            String many = Wording.signIns(text, 1_000, language);

            assertThat(Segments.of(many).count()).isEqualTo(1);
            assertThat(many).contains("a".repeat(15), "2001:0db8:1111:2222:3333:4444:5555:6666", "2:13 AM", " 99 m");
        }
    }
}
