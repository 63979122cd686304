package yardlight.gateway.owner;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.MediaType;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;
import yardlight.gateway.people.PasswordRules;
import yardlight.gateway.people.RandomPassword;
import yardlight.gateway.problem.Problem;

/** The owner gives and changes logins. A password that was made here is shown once. */
@RestController
@RequestMapping(path = "/api/v1/logins", produces = MediaType.APPLICATION_JSON_VALUE)
class LoginsController {

    private static final Logger LOG = LoggerFactory.getLogger(LoginsController.class);
    private final People people;
    private final PasswordEncoder passwords;
    private final PasswordRules rules;
    private final InstantSource clock;
    private final SecureRandom random = new SecureRandom();

    LoginsController(People people, PasswordEncoder passwords, PasswordRules rules, InstantSource clock) {
        this.people = people;
        this.passwords = passwords;
        this.rules = rules;
        this.clock = clock;
    }

    /** A login; with its password only when that was made just now. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record Login(String login, String role, Optional<String> password) {}

    private record Wish(Optional<Role> role, Optional<String> password) {}

    @GetMapping
    List<Login> list() {
        return people.all().stream()
                .map(person -> new Login(person.login(), person.role().word(), Optional.empty()))
                .toList();
    }

    @PutMapping("/{login}")
    Login put(@PathVariable String login, HttpServletRequest request) throws IOException {
        if (!AlarmKey.ID.matcher(login).matches()) {
            throw Problem.notFound("a login is 1 to 64 of a-z, 0-9 and -");
        }
        Wish wish = wish(login, Body.json(request));
        Role role = wish.role().orElseThrow();
        if (login.equals("owner") && role != Role.OWNER) {
            throw Problem.conflict("the login owner stays an owner: somebody must be able to give logins");
        }
        String password = wish.password().orElseGet(() -> RandomPassword.fresh(random));
        people.keep(new Person(login, passwords.encode(password), role), clock.instant());
        LOG.info("Set the login {} with the role {}", login, role.word());
        return new Login(login, role.word(), wish.password().isPresent() ? Optional.empty() : Optional.of(password));
    }

    private Wish wish(String login, Document document) {
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults).needs("role");
        Optional<Role> role = fields.as("role", "must be owner, hand or reader", LoginsController::role);
        Optional<String> password = fields.as("password", "must be a text", Optional::of);
        password.flatMap(text -> rules.fault(text, login)).ifPresent(fault -> fields.fault("password", fault.words()));
        fields.nothingElse();
        faults.orNothing();
        return new Wish(role, password);
    }

    private static Optional<Role> role(String word) {
        return Stream.of(Role.values()).filter(role -> role.word().equals(word)).findFirst();
    }
}
