package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.stereotype.Component;
import yardlight.db.person.People;

/** What a sign-in brings with it, whether it was by a password or a passkey: a session that ends, and a known browser. */
@Component
class Arrival implements MoreWaysIn.Door {

    private final OpenSittings sittings;
    private final MetDevices devices;
    private final People people;

    Arrival(OpenSittings sittings, MetDevices devices, People people) {
        this.sittings = sittings;
        this.devices = devices;
        this.people = people;
    }

    @Override
    public UserDetailsService logins() {
        return SigningIn.logins(people);
    }

    @Override
    public AuthenticationSuccessHandler then(AuthenticationSuccessHandler next) {
        return (request, response, who) -> {
            sittings.begin(who.getName(), request);
            devices.browser(who.getName(), request, response);
            next.onAuthenticationSuccess(request, response, who);
        };
    }

    void leave(HttpServletRequest request) {
        if (request.getSession(false) != null) {
            sittings.end(request.getSession(false));
        }
    }
}
