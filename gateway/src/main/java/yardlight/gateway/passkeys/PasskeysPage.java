package yardlight.gateway.passkeys;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import yardlight.db.passkey.Passkeys;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.people.Confirmed;
import yardlight.gateway.people.DoorLog;
import yardlight.gateway.problem.Problem;

/** Somebody's own passkeys: adds one, by the browser, and removes them. */
@Controller
@RequestMapping("/me/passkeys")
class PasskeysPage {

    private static final String BACK = "redirect:/me/passkeys";

    private final Passkeys passkeys;
    private final PasskeyAddress address;
    private final Confirmed confirmed;
    private final DoorLog log;
    private final InstantSource clock;

    PasskeysPage(Passkeys passkeys, PasskeyAddress address, Confirmed confirmed, DoorLog log, InstantSource clock) {
        this.passkeys = passkeys;
        this.address = address;
        this.confirmed = confirmed;
        this.log = log;
        this.clock = clock;
    }

    /** Times are given as how long ago. */
    record One(String id, String label, String made, String used) {}

    @GetMapping(produces = "text/html")
    String show(Model model, HttpServletRequest request, Principal login) {
        return page("", model, request, login);
    }

    /** The password once more: passkeys can be added and removed for a while. */
    @PostMapping("/confirm")
    String confirm(
            @RequestParam(defaultValue = "") String current,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            Principal login) {
        if (confirmed.confirm(login.getName(), current, request)) {
            return BACK;
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page("me.current.wrong", model, request, login);
    }

    private String page(String wrong, Model model, HttpServletRequest request, Principal login) {
        model.addAttribute("confirmed", confirmed.holds(request));
        model.addAttribute("wrong", wrong);
        model.addAttribute("login", login.getName());
        model.addAttribute("keys", of(login.getName()));
        model.addAttribute("there", address.isThere());
        model.addAttribute("here", request.getServerName().equals(address.host()));
        model.addAttribute("origin", address.origin());
        return "passkeys";
    }

    /** @throws Problem 404 when they have no such passkey, 403 when they did not give their password before */
    @PostMapping("/remove")
    String remove(@RequestParam(defaultValue = "") String id, HttpServletRequest request, Principal login) {
        if (!confirmed.holds(request)) {
            throw Problem.of(HttpStatus.FORBIDDEN, "give your password first, on the page of your passkeys");
        }
        boolean removed = passkeys.handle(login.getName())
                .filter(handle -> passkeys.remove(id, handle))
                .isPresent();
        if (!removed) {
            throw Problem.notFound("there is no such passkey");
        }
        log.say(login.getName(), login.getName() + " removed a passkey");
        return BACK;
    }

    private List<One> of(String login) {
        Instant now = clock.instant();
        return passkeys.handle(login).map(passkeys::of).orElse(List.of()).stream()
                .map(one -> new One(
                        one.id(),
                        one.label(),
                        Clockface.ago(one.createdAt(), now),
                        Clockface.ago(one.lastUsedAt(), now)))
                .toList();
    }
}
