package yardlight.gateway.logins;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import yardlight.db.person.Devices;
import yardlight.db.person.Role;
import yardlight.gateway.problem.Problem;

/** The owner's page: who may sign in, who is invited to, and what is new that somebody signed in with. */
@Controller
@RequestMapping("/logins")
class LoginsPage {

    private static final String BACK = "redirect:/logins";

    private final LoginSheets sheets;
    private final LoginChanges changes;
    private final Inviting inviting;
    private final Wishes wishes;
    private final Devices devices;
    private final InstantSource clock;

    LoginsPage(
            LoginSheets sheets,
            LoginChanges changes,
            Inviting inviting,
            Wishes wishes,
            Devices devices,
            InstantSource clock) {
        this.sheets = sheets;
        this.changes = changes;
        this.inviting = inviting;
        this.wishes = wishes;
        this.devices = devices;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    String show(Model model, Principal login) {
        return page(model, login);
    }

    /** Answers with the page itself, because the link is shown this once. */
    @PostMapping("/invitations")
    String invite(
            @RequestParam(defaultValue = "") String role,
            @RequestParam(defaultValue = "") String contact,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            Principal login) {
        Optional<Role> wanted = Wishes.role(role);
        var wrong = new LinkedHashMap<String, String>();
        if (wanted.isEmpty()) {
            wrong.put("role", "logins.role.wrong");
        }
        if (!contact.isEmpty() && !wishes.isContact(contact)) {
            wrong.put("contact", "logins.contact.wrong");
        }
        model.addAttribute("typedRole", role);
        model.addAttribute("typedContact", contact);
        if (wrong.isEmpty()) {
            String here = ServletUriComponentsBuilder.fromContextPath(request).toUriString();
            Optional<String> who = Optional.of(contact).filter(id -> !id.isEmpty());
            model.addAttribute("fresh", inviting.invite(wanted.orElseThrow(), who, login.getName(), here));
        } else {
            model.addAttribute("wrong", wrong);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        return page(model, login);
    }

    @PostMapping("/invitations/{id}/take-back")
    String takeBack(@PathVariable String id, Principal login) {
        inviting.takeBack(id, login.getName());
        return BACK;
    }

    @PostMapping("/{name}/role")
    String role(@PathVariable String name, @RequestParam(defaultValue = "") String role, Principal login) {
        changes.role(
                name,
                Wishes.role(role).orElseThrow(() -> Problem.unreadable("there is no such role")),
                login.getName());
        return BACK;
    }

    @PostMapping("/{name}/remove")
    String remove(@PathVariable String name, Principal login) {
        changes.remove(name, login.getName());
        return BACK;
    }

    @PostMapping("/{name}/sign-out")
    String signOut(@PathVariable String name, Principal login) {
        changes.endSittings(name, login.getName());
        return BACK;
    }

    @PostMapping("/devices")
    String seen() {
        devices.see(clock.instant());
        return BACK;
    }

    private String page(Model model, Principal login) {
        model.addAttribute("sheet", sheets.all());
        model.addAttribute("roles", Role.values());
        model.addAttribute("contacts", wishes.contacts());
        if (!model.containsAttribute("wrong")) {
            model.addAttribute("wrong", Map.of());
        }
        return "logins";
    }
}
