package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page on which people sign in; what is sent from it is taken by the security chain. */
@Controller
class LoginPage {

    /** A word in the address says what came before: {@code wrong}, {@code out}, {@code joined}. */
    @GetMapping("/login")
    String login(HttpServletRequest request, Model model) {
        model.addAttribute("wrong", request.getParameterMap().containsKey("wrong"));
        return "login";
    }
}
