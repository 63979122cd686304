package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;

class WrongPasswordsTest {

    private final Refusing asked = new Refusing();
    private final WrongPasswords passwords = new WrongPasswords(asked);

    @Test
    void for_ever_new_logins_are_slowed_down_too() {
        for (int i = 0; i < 60; i++) {
            String login = "made-up-" + i;
            assertThatThrownBy(() -> guess(login)).isInstanceOf(BadCredentialsException.class);
        }

        assertThatThrownBy(() -> guess("made-up-60")).isInstanceOf(LockedException.class);
        assertThat(asked.times).isEqualTo(60);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Owner",
                "a b",
                "-a",
                "o\nwner",
                "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
            })
    void for_what_cannot_be_a_login_cost_no_check(String login) {
        assertThatThrownBy(() -> guess(login)).isInstanceOf(BadCredentialsException.class);

        assertThat(asked.times).isZero();
    }

    private void guess(String login) {
        passwords.authenticate(UsernamePasswordAuthenticationToken.unauthenticated(login, "guess"));
    }

    private static final class Refusing implements AuthenticationProvider {

        private int times;

        @Override
        public Authentication authenticate(Authentication claim) {
            times++;
            throw new BadCredentialsException("wrong");
        }

        @Override
        public boolean supports(Class<?> type) {
            return true;
        }
    }
}
