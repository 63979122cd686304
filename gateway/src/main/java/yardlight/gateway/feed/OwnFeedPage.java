package yardlight.gateway.feed;

import java.security.Principal;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.escalation.setup.Contact;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Everybody's own calendar: whoever signs in as a contact of the setup makes and ends the address of their own turns. */
@Controller
class OwnFeedPage {

    private static final String PATH = "/me/calendar";

    private final FeedDesk desk;
    private final People people;
    private final SetupInForce inForce;

    OwnFeedPage(FeedDesk desk, People people, SetupInForce inForce) {
        this.desk = desk;
        this.people = people;
        this.inForce = inForce;
    }

    @GetMapping(path = PATH, produces = "text/html")
    ModelAndView show(Principal login) {
        return page(own(login), "");
    }

    /** Not a redirect: the address is in this answer and nowhere else. */
    @PostMapping(PATH)
    ModelAndView make(Principal login) {
        Contact own = own(login);
        return page(own, desk.make(own, login.getName()));
    }

    @PostMapping(PATH + "/off")
    RedirectView off(Principal login) {
        desk.off(own(login), login.getName());
        return FeedPage.back(PATH);
    }

    private ModelAndView page(Contact own, String address) {
        return desk.page("own-calendar", PATH, own, address);
    }

    private Contact own(Principal login) {
        return people.byLogin(login.getName())
                .flatMap(Person::contact)
                .flatMap(id -> Optional.ofNullable(inForce.setup().contacts().get(id)))
                .orElseThrow(() -> Problem.notFound("this login is none of the people who have turns"));
    }
}
