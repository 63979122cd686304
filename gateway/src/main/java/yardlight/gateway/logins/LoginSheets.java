package yardlight.gateway.logins;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import yardlight.db.person.Device;
import yardlight.db.person.Devices;
import yardlight.db.person.Invitation;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Sitting;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.people.OpenSittings;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.setup.SetupInForce;

/** Puts together what the pages about logins show. */
@Component
class LoginSheets {

    private final People people;
    private final Devices devices;
    private final OpenSittings sittings;
    private final Inviting inviting;
    private final SetupInForce inForce;
    private final InstantSource clock;

    LoginSheets(
            People people,
            Devices devices,
            OpenSittings sittings,
            Inviting inviting,
            SetupInForce inForce,
            InstantSource clock) {
        this.people = people;
        this.devices = devices;
        this.sittings = sittings;
        this.inviting = inviting;
        this.inForce = inForce;
        this.clock = clock;
    }

    /** What owners see; times are given as how long ago. */
    record All(List<OneLogin> logins, List<OpenOne> invitations, List<NewOne> devices) {}

    /**
     * @param contact the name of the contact that they are; empty when nobody has said
     * @param last how long ago they signed in; empty when they never did
     */
    record OneLogin(String login, String role, String contact, String last, int sittings, boolean weak) {}

    record OpenOne(String id, String role, String contact, String by, String left) {}

    record NewOne(String login, String way, String address, String agent, String ago) {}

    /** What somebody sees of themselves. */
    record Own(String login, String role, String contact, boolean weak, List<OwnSitting> sittings) {}

    record OwnSitting(String address, String agent, String began, String heard, boolean here) {}

    All all() {
        Instant now = clock.instant();
        Map<String, Instant> last = devices.last();
        Map<String, Long> open =
                sittings.all().stream().collect(Collectors.groupingBy(Sitting::login, Collectors.counting()));
        return new All(
                people.all().stream()
                        .map(person -> login(person, last, open, now))
                        .toList(),
                inviting.open().stream().map(one -> invitation(one, now)).toList(),
                devices.unseen().stream().map(one -> device(one, now)).toList());
    }

    private OneLogin login(Person person, Map<String, Instant> last, Map<String, Long> open, Instant now) {
        return new OneLogin(
                person.login(),
                person.role().word(),
                name(person.contact()),
                Optional.ofNullable(last.get(person.login()))
                        .map(at -> Clockface.ago(at, now))
                        .orElse(""),
                open.getOrDefault(person.login(), 0L).intValue(),
                person.weak());
    }

    private OpenOne invitation(Invitation one, Instant now) {
        return new OpenOne(
                one.id(), one.role().word(), name(one.contact()), one.by(), Clockface.ago(now, one.expiresAt()));
    }

    private static NewOne device(Device one, Instant now) {
        return new NewOne(one.login(), one.way(), one.address(), one.agent(), Clockface.ago(one.firstAt(), now));
    }

    /** @throws Problem 404 when the login is no more */
    Own own(String login, String sitting) {
        Instant now = clock.instant();
        Person person = people.byLogin(login).orElseThrow(() -> Problem.notFound("there is no such login"));
        return new Own(
                login,
                person.role().word(),
                name(person.contact()),
                person.weak(),
                sittings.all().stream()
                        .filter(one -> one.login().equals(login))
                        .map(one -> new OwnSitting(
                                one.address(),
                                one.agent(),
                                Clockface.ago(one.beganAt(), now),
                                Clockface.ago(one.heardAt(), now),
                                one.id().equals(sitting)))
                        .toList());
    }

    private String name(Optional<String> contact) {
        return contact.map(new Names(inForce.setup())::contact).orElse("");
    }
}
