package yardlight.gateway.feed;

import java.security.Principal;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.db.feed.Feeds;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Makes a person's calendar readable, and ends that. The address is shown once, to whoever asked for it. */
@Controller
class FeedPage {

    private final Feeds feeds;
    private final FeedTokens tokens;
    private final SetupInForce inForce;
    private final LogBook log;

    FeedPage(Feeds feeds, FeedTokens tokens, SetupInForce inForce, LogBook log) {
        this.feeds = feeds;
        this.tokens = tokens;
        this.inForce = inForce;
        this.log = log;
    }

    @GetMapping(path = "/people/{id}/calendar", produces = "text/html")
    ModelAndView show(@PathVariable String id) {
        return page(contact(id), "");
    }

    /** Not a redirect: the address is in this answer and nowhere else. */
    @PostMapping("/people/{id}/calendar")
    ModelAndView make(@PathVariable String id, Principal login) {
        Contact contact = contact(id);
        String here = ServletUriComponentsBuilder.fromCurrentContextPath().toUriString();
        String address = tokens.make(id, login.getName(), here);
        log(contact, login.getName(), " made an address for the calendar of ");
        return page(contact, address);
    }

    @PostMapping("/people/{id}/calendar/off")
    RedirectView off(@PathVariable String id, Principal login) {
        Contact contact = contact(id);
        if (feeds.remove(id)) {
            log(contact, login.getName(), " revoked the address for the calendar of ");
        }
        var view = new RedirectView("/people/{id}/calendar", true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }

    private void log(Contact contact, String by, String did) {
        log.put(new Entry(Entry.What.LOGIN, Map.of("contact", contact.id(), "person", by), by + did + contact.id()));
    }

    private Contact contact(String id) {
        return Optional.ofNullable(inForce.setup().contacts().get(id))
                .orElseThrow(() -> Problem.notFound("there is no such contact"));
    }

    private ModelAndView page(Contact contact, String address) {
        return new ModelAndView("calendar-feed")
                .addObject("id", contact.id())
                .addObject("name", contact.name())
                .addObject("address", address)
                .addObject("made", feeds.of(contact.id()).isPresent());
    }
}
