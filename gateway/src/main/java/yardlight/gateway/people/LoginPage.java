package yardlight.gateway.people;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The page on which people sign in; what is sent from it is taken by the security chain. */
@Controller
class LoginPage {

    @GetMapping("/login")
    String login() {
        return "login";
    }
}
