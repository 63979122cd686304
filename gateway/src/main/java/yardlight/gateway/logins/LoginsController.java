package yardlight.gateway.logins;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.person.Devices;
import yardlight.db.person.People;
import yardlight.db.person.Role;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.people.PasswordRules;
import yardlight.gateway.people.RandomPassword;
import yardlight.gateway.problem.Problem;

/** The owner gives, changes and takes logins. A password that was made here is shown once. */
@RestController
@RequestMapping(path = "/api/v1/logins", produces = MediaType.APPLICATION_JSON_VALUE)
class LoginsController {

    private final People people;
    private final Devices devices;
    private final LoginChanges changes;
    private final PasswordRules rules;
    private final Wishes wishes;
    private final SecureRandom random = new SecureRandom();

    LoginsController(People people, Devices devices, LoginChanges changes, PasswordRules rules, Wishes wishes) {
        this.people = people;
        this.devices = devices;
        this.changes = changes;
        this.rules = rules;
        this.wishes = wishes;
    }

    /**
     * A login; with its password only when that was made just now.
     *
     * @param signedInAt when somebody last did with it
     */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Login(
            String login,
            String role,
            Optional<String> contact,
            Optional<Instant> signedInAt,
            Optional<String> password) {}

    private record Wish(Role role, Optional<String> contact, Optional<String> password) {}

    @GetMapping
    List<Login> list() {
        Map<String, Instant> last = devices.last();
        return people.all().stream()
                .map(person -> new Login(
                        person.login(),
                        person.role().word(),
                        person.contact(),
                        Optional.ofNullable(last.get(person.login())),
                        Optional.empty()))
                .toList();
    }

    @PutMapping("/{login}")
    Login put(@PathVariable String login, HttpServletRequest request, Principal by) throws IOException {
        if (!AlarmKey.ID.matcher(login).matches()) {
            throw Problem.notFound("a login is 1 to 64 of a-z, 0-9 and -");
        }
        Wish wish = wish(login, Body.json(request));
        String password = wish.password().orElseGet(() -> RandomPassword.fresh(random));
        changes.put(login, wish.role(), wish.contact(), password, by.getName());
        Optional<String> shown = wish.password().isPresent() ? Optional.empty() : Optional.of(password);
        return new Login(login, wish.role().word(), wish.contact(), Optional.empty(), shown);
    }

    @DeleteMapping("/{login}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void remove(@PathVariable String login, Principal by) {
        changes.remove(login, by.getName());
    }

    @DeleteMapping("/{login}/sessions")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void endSessions(@PathVariable String login, Principal by) {
        changes.endSittings(login, by.getName());
    }

    private Wish wish(String login, Document document) {
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults).needs("role");
        Optional<Role> role = wishes.role(fields);
        Optional<String> contact = wishes.contact(fields);
        Optional<String> password = fields.as("password", "must be a text", Optional::of);
        password.flatMap(text -> rules.fault(text, login)).ifPresent(fault -> fields.fault("password", fault.words()));
        fields.nothingElse();
        faults.orNothing();
        return new Wish(role.orElseThrow(), contact, password);
    }
}
