package yardlight.gateway.logins;

import jakarta.servlet.http.HttpServletRequest;
import java.time.InstantSource;
import java.util.Optional;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import yardlight.db.person.Change;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.people.DoorLog;
import yardlight.gateway.people.OpenSittings;
import yardlight.gateway.problem.Problem;

/**
 * Changes who may sign in and as what. Whoever it is about is signed out by it at once, everywhere; each change is a line
 * in the log. All methods throw {@link Problem}: 404 when there is no such login, 409 when nobody would be left to give
 * logins.
 */
@Component
class LoginChanges {

    private final People people;
    private final PasswordEncoder passwords;
    private final OpenSittings sittings;
    private final DoorLog log;
    private final InstantSource clock;

    LoginChanges(People people, PasswordEncoder passwords, OpenSittings sittings, DoorLog log, InstantSource clock) {
        this.people = people;
        this.passwords = passwords;
        this.sittings = sittings;
        this.log = log;
        this.clock = clock;
    }

    /** Makes the login, or gives it all of this anew. */
    void put(String login, Role role, Optional<String> contact, String password, String by) {
        String hash = passwords.encode(password);
        Change change = people.change(
                login, before -> before.as(role).of(contact.or(before::contact)).withPassword(hash));
        if (change == Change.UNKNOWN) {
            people.keepIfNew(new Person(login, hash, role, contact, false), clock.instant(), () -> {});
            log.say(login, by + " made the login " + login + " as " + role.word());
        } else {
            orRefused(change);
            sittings.endAll(login);
            log.say(login, by + " gave " + login + " another password, as " + role.word());
        }
    }

    void role(String login, Role role, String by) {
        orRefused(people.change(login, before -> before.as(role)));
        sittings.endAll(login);
        log.say(login, by + " made " + login + " " + role.word());
    }

    void remove(String login, String by) {
        orRefused(people.remove(login));
        log.say(login, by + " removed the login " + login);
    }

    void endSittings(String login, String by) {
        if (people.byLogin(login).isEmpty()) {
            orRefused(Change.UNKNOWN);
        }
        int ended = sittings.endAll(login);
        log.say(login, by + " ended the sessions of " + login + ": " + ended);
    }

    /** Somebody's own password; the session from which they change it goes on. */
    void ownPassword(String login, String password, HttpServletRequest request) {
        String hash = passwords.encode(password);
        orRefused(people.change(login, before -> before.withPassword(hash)));
        sittings.endOthers(login, request);
        log.say(login, login + " chose another password");
    }

    private static void orRefused(Change change) {
        switch (change) {
            case DONE -> {}
            case UNKNOWN -> throw Problem.notFound("there is no such login");
            case LAST_OWNER -> throw Problem.conflict("this is the last owner: somebody must be able to give logins");
        }
    }
}
