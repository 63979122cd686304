package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.security.crypto.password.PasswordEncoder;
import yardlight.gateway.TestGateway;

/**
 * Which passwords are taken, against NIST SP 800-63B-4, 3.1.1.2. Its second public draft was read (github.com/usnistgov);
 * of the final text the sentence on lengths, as the OWASP ASVS project quotes it (its issue 3242).
 */
class PasswordRulesAgainstTest {

    private final PasswordRules rules = new PasswordRules(new TestGateway.InMemorySetup());

    /** 3.1.1.2: "SHALL require passwords that are used as a single-factor authentication mechanism to be a minimum of 15". */
    @Test
    void fifteen_characters_are_enough_and_fourteen_are_not() {
        assertThat(rules.fault("gate hinge rus", "ana")).contains(PasswordFault.SHORT);
        assertThat(rules.fault("gate hinge rust", "ana")).isEmpty();
    }

    /** 3.1.1.2: "SHOULD permit a maximum password length of at least 64 characters"; here 128. */
    @Test
    void sixty_four_characters_are_taken_and_what_is_too_long_is_refused_and_not_cut() {
        assertThat(rules.fault("abcdefgh".repeat(3) + "rust".repeat(10), "ana")).isEmpty();
        assertThat(rules.fault("gate hinge rust ".repeat(8), "ana")).isEmpty();
        assertThat(rules.fault("gate hinge rust ".repeat(8) + "!", "ana")).contains(PasswordFault.LONG);
        assertThat(rules.fault("a".repeat(1_000_000), "ana")).contains(PasswordFault.LONG);
    }

    /** 3.1.1.2: "Each Unicode code point SHALL be counted as a single character"; each of these is two chars in Java. */
    @Test
    void a_code_point_is_one_character() {
        String lamps = new String(Character.toChars(0x1F4A1)) + "x";

        assertThat(rules.fault(lamps.repeat(7), "ana")).contains(PasswordFault.SHORT);
        assertThat(rules.fault(lamps.repeat(7) + "y", "ana")).isEmpty();
    }

    /** 3.1.1.2: "SHALL NOT impose other composition rules". */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "all small letters",
                "730194627501846",
                "ALL LARGE LETTERS",
                "!?#$%&/()=+*~<>|",
                "más allá del pozo viejo"
            })
    void what_a_password_is_made_of_does_not_matter(String password) {
        assertThat(rules.fault(password, "ana")).isEmpty();
    }

    /** 3.1.1.2: NFKC of UAX 15 "before hashing"; the pairs are canonical (e with acute) and compatible (fi) there. */
    @Test
    void the_same_letters_are_the_same_password_from_every_keyboard() {
        PasswordEncoder passwords = SigningIn.passwords();
        String stored = passwords.encode("caf\u00e9 on the \uFB01rst road");

        assertThat(passwords.matches("cafe\u0301 on the first road", stored)).isTrue();
        assertThat(passwords.matches("cafe on the first road", stored)).isFalse();
    }

    /** On the list that zxcvbn ships; 3.1.1.2: "The entire password SHALL be subject to comparison, not substrings". */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "123456789qwerty",
                "QwertyUiop12345",
                "password standard",
                "passwordpassword",
                "123456123456123456",
                "aaaaaaaaaaaaaaa"
            })
    void a_common_password_is_refused_also_when_it_is_repeated(String password) {
        assertThat(rules.fault(password, "ana")).contains(PasswordFault.COMMON);
    }

    @Test
    void a_common_word_within_a_password_is_no_reason_to_refuse_it() {
        assertThat(rules.fault("my password is a secret", "ana")).isEmpty();
    }

    /** 3.1.1.2: "Context-specific words, such as the name of the service, the username, and derivatives thereof". */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "ana-of-the-north-ranch",
                "Ana of the North Ranch",
                "Yardlight Yardlight",
                "mesa-9-mesa-9-mesa-9",
                "MESA 9 MESA 9 MESA 9"
            })
    void the_name_of_the_login_the_program_or_a_site_is_refused(String password) {
        assertThat(rules.fault(password, "ana-of-the-north-ranch")).contains(PasswordFault.NAME);
    }

    /** What is made here is not asked whether it is common: 98 random bits are not. It must be long enough all the same. */
    @Test
    void a_made_password_is_one_that_would_be_taken() {
        assertThat(rules.fault(RandomPassword.fresh(new java.util.SplittableRandom(1)), "ana"))
                .isEmpty();
    }
}
