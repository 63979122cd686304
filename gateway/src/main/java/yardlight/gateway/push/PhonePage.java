package yardlight.gateway.push;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.setup.Contact;

/**
 * The page on which somebody has their own browser subscribe. The browser makes the address of the line; the owner may have it
 * added to the setup from here, everybody else hands it to the owner.
 */
@Controller
@RequestMapping("/phone")
class PhonePage {

    private final PushDesk desk;
    private final PhoneLines lines;

    PhonePage(PushDesk desk, PhoneLines lines) {
        this.desk = desk;
        this.lines = lines;
    }

    @GetMapping(produces = "text/html")
    String show(Model model, HttpServletRequest request) {
        List<Contact> people = request.isUserInRole("OWNER") ? lines.people() : List.of();
        model.addAttribute("key", desk.publicKey().orElse(""));
        model.addAttribute("people", people);
        return "phone";
    }

    @PostMapping("/lines")
    View add(@RequestParam String contact, @RequestParam String address, Principal login) {
        lines.add(contact, address, login.getName());
        var sheet = new RedirectView("/people/" + contact, true);
        sheet.setStatusCode(HttpStatus.SEE_OTHER);
        return sheet;
    }
}
