package yardlight.gateway.lines;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.time.InstantSource;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.setup.Contact;

/** A contact's page: their lines, when each was last shown to work, and the button that tries it. */
@Controller
@RequestMapping("/contacts/{id}")
class ContactPage {

    private final PeopleLines people;
    private final InstantSource clock;

    ContactPage(PeopleLines people, InstantSource clock) {
        this.people = people;
        this.clock = clock;
    }

    @GetMapping(produces = "text/html")
    String show(@PathVariable String id, Model model, HttpServletRequest request) {
        Contact contact = people.one(id);
        model.addAttribute("sheet", ContactSheets.of(contact, people.lines(contact, request), clock.instant()));
        model.addAttribute("mayTest", request.isUserInRole("HAND") || request.isUserInRole("OWNER"));
        return "contact";
    }

    @PostMapping("/lines/{line}/test")
    View test(@PathVariable String id, @PathVariable String line, Principal login) {
        people.test(id, line, login.getName());
        var back = new RedirectView("/contacts/" + id, true);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return back;
    }
}
