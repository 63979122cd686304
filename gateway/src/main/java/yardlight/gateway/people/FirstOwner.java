package yardlight.gateway.people;

import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;

/**
 * Makes the owner's login at the first start. A password that the rules are against is taken there all the same: a gateway
 * that does not start wakes nobody. It is warned of once, and another one is asked for on the owner's pages.
 */
@Component
class FirstOwner implements ApplicationRunner {

    static final String LOGIN = "owner";
    private static final Logger LOG = LoggerFactory.getLogger(FirstOwner.class);

    private final People people;
    private final PasswordEncoder passwords;
    private final PasswordRules rules;
    private final InstantSource clock;
    private final String wanted;

    FirstOwner(
            People people,
            PasswordEncoder passwords,
            PasswordRules rules,
            InstantSource clock,
            @Value("${yardlight.owner-password:}") String wanted) {
        this.people = people;
        this.passwords = passwords;
        this.rules = rules;
        this.clock = clock;
        this.wanted = wanted;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (people.anyOwner()) {
            return;
        }
        boolean made = wanted.isBlank();
        String password = made ? RandomPassword.fresh(new SecureRandom()) : wanted;
        Optional<PasswordFault> fault = rules.fault(password, LOGIN);
        var owner = new Person(LOGIN, passwords.encode(password), Role.OWNER, Optional.empty(), fault.isPresent());
        people.keepIfNew(owner, clock.instant(), () -> {
            say(made, password);
            fault.ifPresent(
                    why -> LOG.warn("yardlight.owner-password {}: choose another one on the page /me", why.words()));
        });
    }

    /** Before it is kept: a start that is killed between the two would leave a password that nobody has seen. */
    private static void say(boolean made, String password) {
        if (made) {
            // On purpose not a log line: logs are kept and shipped, this is to be seen once.
            System.out.println(
                    "Yardlight: sign in as " + LOGIN + " with the password " + password + " (shown only this once)");
        } else {
            LOG.info("Made the login {} with the password from yardlight.owner-password", LOGIN);
        }
    }
}
