package yardlight.gateway.logins;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.gateway.people.OpenSittings;
import yardlight.gateway.people.OwnPassword;
import yardlight.gateway.people.PasswordFault;
import yardlight.gateway.people.PasswordRules;

/** Everybody's own page: their password, and where they are signed in. */
@Controller
@RequestMapping("/me")
class MePage {

    private final LoginSheets sheets;
    private final LoginChanges changes;
    private final PasswordRules rules;
    private final OwnPassword own;
    private final OpenSittings sittings;

    MePage(LoginSheets sheets, LoginChanges changes, PasswordRules rules, OwnPassword own, OpenSittings sittings) {
        this.sheets = sheets;
        this.changes = changes;
        this.rules = rules;
        this.own = own;
        this.sittings = sittings;
    }

    @GetMapping(produces = "text/html")
    String show(Model model, HttpServletRequest request, Principal login) {
        return page(Map.of(), model, request, login);
    }

    @PostMapping("/password")
    String password(
            @RequestParam(defaultValue = "") String current,
            @RequestParam(defaultValue = "") String password,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            Principal login) {
        var wrong = new LinkedHashMap<String, String>();
        rules.fault(password, login.getName()).map(PasswordFault::key).ifPresent(key -> wrong.put("password", key));
        if (!own.is(login.getName(), current, request)) {
            wrong.put("current", "me.current.wrong");
        }
        if (!wrong.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(wrong, model, request, login);
        }
        changes.ownPassword(login.getName(), password, request);
        return "redirect:/me?changed";
    }

    /** Ends all of their sessions but the one that this comes from; who found it open cannot. */
    @PostMapping("/sessions")
    String endOthers(
            @RequestParam(defaultValue = "") String current,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            Principal login) {
        if (!own.is(login.getName(), current, request)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(Map.of("end", "me.current.wrong"), model, request, login);
        }
        sittings.endOthers(login.getName(), request);
        return "redirect:/me?ended";
    }

    private String page(Map<String, String> wrong, Model model, HttpServletRequest request, Principal login) {
        model.addAttribute("sheet", sheets.own(login.getName(), OpenSittings.of(request)));
        model.addAttribute("wrong", wrong);
        return "me";
    }
}
