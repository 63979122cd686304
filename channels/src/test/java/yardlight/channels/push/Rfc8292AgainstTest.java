package yardlight.channels.push;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.GeneralSecurityException;
import org.junit.jupiter.api.Test;

/** The verifier of these tests against the example of RFC 8292 section 2.4 (read, second hand: several copies that agree). */
class Rfc8292AgainstTest {

    private static final String SHOWN = "vapid t=eyJ0eXAiOiJKV1QiLCJhbGciOiJFUzI1NiJ9"
            + ".eyJhdWQiOiJodHRwczovL3B1c2guZXhhbXBsZS5uZXQiLCJleHAiOjE0NTM1MjM3NjgsInN1YiI6Im1haWx0bzpwdXNoQGV4YW1wbGUuY29tIn0"
            + ".i3CYb7t4xfxCDquptFOepC9GAu_HLGkMlMuCGSK2rpiUfnK9ojFwDXb1JrErtmysazNjjvW2L9OkSSHzvoD1oA"
            + ", k=BA1Hxzyi1RUM1b5wjxsn7nGxAszw2u61m164i3MrAIxHF6YK5h4SDYic-dRuU_RCPCfA5aq9ojSwk5Y2EmClBPs";

    @Test
    void takes_the_token_of_the_example() throws GeneralSecurityException {
        Token token = Token.in(SHOWN);

        assertThat(token.claims().get("aud").stringValue()).isEqualTo("https://push.example.net");
        assertThat(token.claims().get("exp").longValue()).isEqualTo(1_453_523_768);
        assertThat(token.claims().get("sub").stringValue()).isEqualTo("mailto:push@example.com");
    }

    @Test
    void does_not_take_it_with_another_claim_or_another_key() {
        assertThatThrownBy(() -> Token.in(SHOWN.replace("eyJhdWQi", "eyJhdWRi")))
                .isInstanceOf(GeneralSecurityException.class);
        assertThatThrownBy(() -> Token.in(SHOWN.replaceFirst("k=.*", "k=" + Browser.KEY)))
                .isInstanceOf(GeneralSecurityException.class);
    }
}
