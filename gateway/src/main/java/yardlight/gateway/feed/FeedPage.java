package yardlight.gateway.feed;

import java.security.Principal;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Makes a person's calendar readable, and ends that. The address is shown once, to whoever asked for it. */
@Controller
class FeedPage {

    private final FeedDesk desk;
    private final SetupInForce inForce;

    FeedPage(FeedDesk desk, SetupInForce inForce) {
        this.desk = desk;
        this.inForce = inForce;
    }

    @GetMapping(path = "/people/{id}/calendar", produces = "text/html")
    ModelAndView show(@PathVariable String id) {
        return page(contact(id), "");
    }

    /** Not a redirect: the address is in this answer and nowhere else. */
    @PostMapping("/people/{id}/calendar")
    ModelAndView make(@PathVariable String id, Principal login) {
        Contact contact = contact(id);
        return page(contact, desk.make(contact, login.getName()));
    }

    @PostMapping("/people/{id}/calendar/off")
    RedirectView off(@PathVariable String id, Principal login) {
        desk.off(contact(id), login.getName());
        return back("/people/{id}/calendar");
    }

    private ModelAndView page(Contact contact, String address) {
        return desk.page("calendar-feed", "/people/" + contact.id() + "/calendar", contact, address);
    }

    static RedirectView back(String path) {
        var view = new RedirectView(path, true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }

    private Contact contact(String id) {
        return Optional.ofNullable(inForce.setup().contacts().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such contact"));
    }
}
