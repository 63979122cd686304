package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.util.HexFormat;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;

/** How passwords are kept, against RFC 9106 and the OWASP Password Storage Cheat Sheet. */
class PasswordsAgainstTest {

    private final PasswordEncoder passwords = SigningIn.passwords();

    /** RFC 9106 5.3: from memory, recomputed (equal). Holds the library, which the encoder below uses. */
    @Test
    void the_library_computes_the_vector_of_rfc_9106() {
        var parameters = new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(32)
                .withIterations(3)
                .withParallelism(4)
                .withSalt(repeated(16, 2))
                .withSecret(repeated(8, 3))
                .withAdditional(repeated(12, 4))
                .build();
        var tag = new byte[32];

        var argon2 = new Argon2BytesGenerator();
        argon2.init(parameters);
        argon2.generateBytes(repeated(32, 1), tag);

        assertThat(HexFormat.of().formatHex(tag))
                .isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    /** OWASP Password Storage Cheat Sheet (read): m=19456, t=2, p=1. */
    @Test
    void what_is_stored_says_argon2id_with_the_least_that_is_allowed() {
        assertThat(passwords.encode("a lamp")).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
    }

    @Test
    void the_same_password_is_stored_differently_each_time() {
        assertThat(passwords.encode("a lamp")).isNotEqualTo(passwords.encode("a lamp"));
    }

    @Test
    void a_password_that_was_right_is_right_again_and_a_wrong_one_still_wrong() {
        String stored = passwords.encode("a lamp");

        assertThat(passwords.matches("a lamp", stored)).isTrue();
        assertThat(passwords.matches("a lamp", stored)).isTrue();
        assertThat(passwords.matches("a lamb", stored)).isFalse();
        assertThat(passwords.matches("a lamp", passwords.encode("another"))).isFalse();
    }

    /** OWASP: whole passwords are checked; what is too long is refused, not cut. */
    @Test
    void a_password_is_never_cut() {
        String longest = "a".repeat(128);

        assertThat(passwords.matches(longest, passwords.encode(longest))).isTrue();
        assertThat(passwords.matches(longest + "b", passwords.encode(longest))).isFalse();
    }

    /** OWASP Session Management asks for 64 bits at least of what is random; here are 20 of 31 letters: derived. */
    @Test
    void a_made_password_has_twenty_letters_that_cannot_be_mistaken() {
        assertThat(RandomPassword.fresh(new SecureRandom())).matches("[a-hjkmnp-z2-9]{5}(-[a-hjkmnp-z2-9]{5}){3}");
    }

    private static byte[] repeated(int count, int value) {
        var bytes = new byte[count];
        java.util.Arrays.fill(bytes, (byte) value);
        return bytes;
    }
}
