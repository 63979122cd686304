package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.stereotype.Component;

/** Asks somebody who is signed in for their password once more, counted like any other guess; nothing at all is no guess. */
@Component
public class OwnPassword {

    private final AuthenticationManager signIn;

    OwnPassword(AuthenticationManager signIn) {
        this.signIn = signIn;
    }

    /**
     * @throws org.springframework.security.authentication.LockedException after too many wrong ones
     */
    public boolean is(String login, String password, HttpServletRequest request) {
        if (password.isEmpty()) {
            return false;
        }
        var claim = UsernamePasswordAuthenticationToken.unauthenticated(login, password);
        claim.setDetails(new DeviceDetails(request));
        try {
            return signIn.authenticate(claim).isAuthenticated();
        } catch (BadCredentialsException wrong) {
            return false;
        }
    }
}
