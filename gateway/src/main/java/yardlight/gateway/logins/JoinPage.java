package yardlight.gateway.logins;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.db.person.Invitation;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.people.MetDevices;
import yardlight.gateway.people.PasswordFault;
import yardlight.gateway.people.PasswordRules;

/**
 * The page behind an invitation's link. To look at it does nothing, because mail scanners follow links too; the button makes
 * the login, once. Whoever chose it signs in by it afterwards, from a browser that is known by then.
 */
@Controller
@RequestMapping("/join/{token}")
class JoinPage {

    private final Inviting inviting;
    private final PasswordRules rules;
    private final MetDevices devices;

    JoinPage(Inviting inviting, PasswordRules rules, MetDevices devices) {
        this.inviting = inviting;
        this.rules = rules;
        this.devices = devices;
    }

    @GetMapping
    String show(@PathVariable String token, Model model) {
        Invitation invitation = inviting.behind(token);
        model.addAttribute("token", token);
        return page(invitation, invitation.contact().orElse(""), Map.of(), model);
    }

    @PostMapping
    String join(
            @PathVariable String token,
            @RequestParam(defaultValue = "") String login,
            @RequestParam(defaultValue = "") String password,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Invitation invitation = inviting.behind(token);
        var wrong = new LinkedHashMap<String, String>();
        if (!AlarmKey.ID.matcher(login).matches()) {
            wrong.put("login", "join.login.form");
        }
        rules.fault(password, login).map(PasswordFault::key).ifPresent(key -> wrong.put("password", key));
        if (wrong.isEmpty() && !inviting.join(invitation, login, password)) {
            wrong.put("login", "join.login.taken");
        }
        if (!wrong.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("token", token);
            return page(invitation, login, wrong, model);
        }
        devices.browser(login, request, response);
        return "redirect:/login?joined";
    }

    private static String page(Invitation invitation, String login, Map<String, String> wrong, Model model) {
        model.addAttribute("invitation", invitation);
        model.addAttribute("typed", login);
        model.addAttribute("wrong", wrong);
        return "join";
    }
}
