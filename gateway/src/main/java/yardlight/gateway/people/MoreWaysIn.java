package yardlight.gateway.people;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;

/** Another way to sign in than by a password. */
public interface MoreWaysIn {

    /**
     * Adds its filters to the door for people.
     *
     * @param door who comes in by it has a session that ends, and a browser that is known
     */
    void add(HttpSecurity http, Door door);

    /** What the door lends to every way in. */
    interface Door {

        /** Everybody who may sign in. */
        UserDetailsService logins();

        /** Lets somebody in, and then goes on. */
        AuthenticationSuccessHandler then(AuthenticationSuccessHandler next);
    }
}
