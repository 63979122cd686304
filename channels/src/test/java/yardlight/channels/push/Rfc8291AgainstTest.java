package yardlight.channels.push;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import org.junit.jupiter.api.Test;

/** The receiver of these tests against the example of RFC 8291 section 5 (read, second hand: several copies that agree). */
class Rfc8291AgainstTest {

    private static final String MESSAGE =
            "DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPTpK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN";

    @Test
    void opens_the_message_of_the_example() throws GeneralSecurityException {
        assertThat(new String(Browser.open(Browser.bytes(MESSAGE)), StandardCharsets.US_ASCII))
                .isEqualTo("When I grow up, I want to be a watermelon");
    }

    @Test
    void does_not_open_it_with_one_bit_changed() {
        byte[] changed = Browser.bytes(MESSAGE);
        changed[changed.length - 20] ^= 1;

        assertThatThrownBy(() -> Browser.open(changed)).isInstanceOf(GeneralSecurityException.class);
    }
}
