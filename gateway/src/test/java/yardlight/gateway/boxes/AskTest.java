package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;
import yardlight.escalation.shutin.Asker;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.Terms;
import yardlight.gateway.posting.PostingBox;

/** What a box is given to do, and how it can tell that it comes from its gateway. */
class AskTest {

    private static final String HASH = KeyRing.hash("the-key-of-mesa-9");

    /** The worked example of docs/api.md; its signature was made by openssl, not by this code. */
    @Test
    void is_signed_as_the_manual_shows() {
        Instant expires = Instant.parse("2026-11-28T08:15:00.123456Z");
        var request = new Request(
                "mesa-9.shut-in.mx04qvuo",
                RequestState.FETCHED,
                Terms.Way.BOX,
                "mesa-9-box",
                new Asker(Asker.Kind.PAGE, "ana"),
                expires.minusSeconds(300),
                expires,
                expires.plusSeconds(60),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        Ask ask = Ask.of(request, new PostingBox(Fixtures.aBox(), HASH));

        assertThat(ask)
                .isEqualTo(new Ask(
                        "mesa-9.shut-in.mx04qvuo",
                        "shut-in",
                        "2026-11-28T08:15:00Z",
                        "MGSBbz9B4XooYExB4RI7IZw89Qo2q2/Ui9TgKmtcbSU="));
    }

    /** RFC 4231, test cases 1 and 2. */
    @Test
    void is_signed_with_the_hmac_of_the_standard() {
        byte[] twenty = new byte[20];
        java.util.Arrays.fill(twenty, (byte) 0x0b);

        assertThat(hex(Ask.sign("Hi There", twenty)))
                .isEqualTo("b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7");
        assertThat(hex(Ask.sign("what do ya want for nothing?", "Jefe".getBytes(StandardCharsets.UTF_8))))
                .isEqualTo("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
    }

    private static String hex(String base64) {
        return HexFormat.of().formatHex(Base64.getDecoder().decode(base64));
    }
}
