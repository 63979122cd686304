package yardlight.gateway.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Component;
import yardlight.db.person.Devices;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.gateway.page.PageFact;

/** Puts onto every page, as {@code door}, what whoever looks at it should know about the doors. */
@Component
class DoorNews implements PageFact {

    private final Devices devices;
    private final People people;

    DoorNews(Devices devices, People people) {
        this.devices = devices;
        this.people = people;
    }

    @Override
    public String name() {
        return "door";
    }

    @Override
    public Seen of(HttpServletRequest request) {
        return new Seen(request);
    }

    /** Asks the database only when a page asks. */
    public final class Seen {

        private final HttpServletRequest request;

        private Seen(HttpServletRequest request) {
            this.request = request;
        }

        /** Whether somebody signed in with something new that no owner has said to know of; to owners only. */
        public boolean isNewDevice() {
            return request.isUserInRole("OWNER") && devices.anyNew();
        }

        /** Whether the one who looks has a password that the rules are against. */
        public boolean isWeakPassword() {
            String login = request.getRemoteUser();
            return login != null && people.byLogin(login).filter(Person::weak).isPresent();
        }
    }
}
