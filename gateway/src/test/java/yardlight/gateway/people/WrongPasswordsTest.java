package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.servlet.http.Cookie;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;

class WrongPasswordsTest {

    private final Refusing asked = new Refusing();
    private final Known known = new Known();
    private final WrongPasswords passwords = new WrongPasswords(asked, known);

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

    /** NIST SP 800-63B-4, 3.2.2: at most 100 wrong ones in a row for one account, however many addresses they come from. */
    @Test
    void for_one_login_from_ever_new_addresses_are_slowed_down_too() {
        lockStrangersOut();

        assertThatThrownBy(() -> guess("owner", "203.0.113.200", "")).isInstanceOf(LockedException.class);
        assertThatThrownBy(() -> guess("another", "203.0.113.200", "")).isInstanceOf(BadCredentialsException.class);
    }

    /** OWASP, "Slow Down Online Guessing Attacks with Device Cookies": a known browser is counted for itself. */
    @Test
    void of_strangers_do_not_keep_out_whoever_has_signed_in_in_this_browser_or_from_this_address() {
        known.address = "192.0.2.1";
        lockStrangersOut();

        assertThatThrownBy(() -> guess("owner", "203.0.113.201", "known")).isInstanceOf(BadCredentialsException.class);
        assertThatThrownBy(() -> guess("owner", "192.0.2.1", "")).isInstanceOf(BadCredentialsException.class);
        asked.right = true;
        assertThat(guess("owner", "203.0.113.201", "known").isAuthenticated()).isTrue();
        assertThat(guess("owner", "192.0.2.1", "").isAuthenticated()).isTrue();
        assertThatThrownBy(() -> guess("owner", "203.0.113.202", "made-up")).isInstanceOf(LockedException.class);
    }

    @Test
    void in_a_known_browser_make_it_a_stranger_in_the_end() {
        lockStrangersOut();
        for (int i = 0; i < 10; i++) {
            assertThatThrownBy(() -> guess("owner", "203.0.113.203", "known"))
                    .isInstanceOf(BadCredentialsException.class);
        }

        assertThatThrownBy(() -> guess("owner", "203.0.113.203", "known")).isInstanceOf(LockedException.class);
    }

    private void lockStrangersOut() {
        for (int i = 0; i < 100; i++) {
            String address = "203.0.113." + i;
            assertThatThrownBy(() -> guess("owner", address, "")).isInstanceOf(BadCredentialsException.class);
        }
    }

    private Authentication guess(String login, String address, String browser) {
        var request = new MockHttpServletRequest();
        request.setRemoteAddr(address);
        request.setCookies(new Cookie("device-" + login, browser));
        var claim = UsernamePasswordAuthenticationToken.unauthenticated(login, "guess");
        claim.setDetails(new DeviceDetails(request));
        return passwords.authenticate(claim);
    }

    private void guess(String login) {
        passwords.authenticate(UsernamePasswordAuthenticationToken.unauthenticated(login, "guess"));
    }

    private static final class Refusing implements AuthenticationProvider {

        private int times;
        private boolean right;

        @Override
        public Authentication authenticate(Authentication claim) {
            times++;
            if (right) {
                return UsernamePasswordAuthenticationToken.authenticated(claim.getName(), "", List.of());
            }
            throw new BadCredentialsException("wrong");
        }

        @Override
        public boolean supports(Class<?> type) {
            return true;
        }
    }

    /** Knows one browser, and one address. */
    private static final class Known implements KnownDevices {

        private String address = "";

        @Override
        public Optional<String> browser(String login, DeviceDetails details) {
            return details.cookie(login).filter("known"::equals);
        }

        @Override
        public boolean cameFrom(String login, String from) {
            return from.equals(address) && !from.isEmpty();
        }

        @Override
        public void program(String login, DeviceDetails details) {}
    }
}
