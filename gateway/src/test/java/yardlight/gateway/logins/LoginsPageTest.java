package yardlight.gateway.logins;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;

/** The owner says who may sign in; whoever it is about is signed out by it. */
@GatewayTest
class LoginsPageTest {

    private static final String PASSWORD = "gate hinge rust oil";

    private final Doors doors;
    private final People people;
    private final PasswordEncoder passwords;

    LoginsPageTest(Doors doors, People people, PasswordEncoder passwords) {
        this.doors = doors;
        this.people = people;
        this.passwords = passwords;
    }

    @Test
    void shows_who_may_sign_in_and_who_is_invited() {
        Visitor owner = owner();
        somebody("vic", Role.READER);
        new Visitor(doors, "198.51.100.30").signIn("vic", PASSWORD);

        MvcTestResult made = owner.post("/logins/invitations", "role", "hand", "contact", "ben");

        assertThat(made)
                .hasStatus(200)
                .bodyText()
                .contains("https://yardlight.example/join/", "vic", "signed in 0 s ago");
        assertThat(owner.get("/logins"))
                .bodyText()
                .contains("hand, invited by owner, good for another 7 days")
                .doesNotContain("/join/");
    }

    @Test
    void takes_an_invitation_back() throws Exception {
        Visitor owner = owner();
        String page = owner.post("/logins/invitations", "role", "reader")
                .getResponse()
                .getContentAsString();
        Matcher link =
                Pattern.compile("https://yardlight.example(/join/[\\w-]{22})").matcher(page);
        Matcher id = Pattern.compile("/logins/invitations/(\\w{16})/take-back").matcher(page);
        assertThat(link.find()).isTrue();
        String last = "";
        while (id.find()) {
            last = id.group(1);
        }

        assertThat(owner.post("/logins/invitations/" + last + "/take-back")).hasStatus(302);

        assertThat(new Visitor(doors, "198.51.100.31").get(link.group(1))).hasStatus(404);
    }

    @Test
    void says_beside_the_field_what_is_wrong_with_an_invitation() {
        assertThat(owner().post("/logins/invitations", "role", "king", "contact", "nobody"))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"role-wrong\"", "id=\"contact-wrong\"", "aria-describedby=\"role-wrong\"");
    }

    @Test
    void ends_the_sessions_of_somebody_whose_role_changes() {
        somebody("uma", Role.READER);
        Visitor uma = new Visitor(doors, "198.51.100.32").signIn("uma", PASSWORD);
        assertThat(uma.isIn()).isTrue();

        assertThat(owner().post("/logins/uma/role", "role", "hand")).hasStatus(302);

        assertThat(uma.isIn()).isFalse();
        assertThat(people.byLogin("uma"))
                .hasValueSatisfying(person -> assertThat(person.role()).isEqualTo(Role.HAND));
    }

    @Test
    void ends_the_sessions_and_the_remembered_password_of_somebody_who_is_removed() {
        somebody("tom", Role.READER);
        Visitor tom = new Visitor(doors, "198.51.100.33").signIn("tom", PASSWORD);

        assertThat(owner().post("/logins/tom/remove")).hasStatus(302);

        assertThat(tom.isIn()).isFalse();
        assertThat(tom.trySignIn("tom", PASSWORD)).hasHeader("Location", "/login?wrong");
    }

    @Test
    void ends_all_sessions_of_somebody_on_request_and_nobody_else_s() {
        somebody("sue", Role.READER);
        Visitor phone = new Visitor(doors, "198.51.100.34").signIn("sue", PASSWORD);
        Visitor tablet = new Visitor(doors, "198.51.100.35").signIn("sue", PASSWORD);
        Visitor owner = owner();

        assertThat(owner.post("/logins/sue/sign-out")).hasStatus(302);

        assertThat(phone.isIn()).isFalse();
        assertThat(tablet.isIn()).isFalse();
        assertThat(owner.isIn()).isTrue();
    }

    @Test
    void never_removes_or_demotes_the_last_owner() {
        Visitor owner = owner();

        assertThat(owner.post("/logins/owner/remove")).hasStatus(409);
        assertThat(owner.post("/logins/owner/role", "role", "reader")).hasStatus(409);
        assertThat(doors.as("owner", HttpMethod.DELETE, "/api/v1/logins/owner")).hasStatus(409);

        somebody("ray", Role.OWNER);
        assertThat(owner.post("/logins/ray/role", "role", "reader")).hasStatus(302);
        assertThat(owner.post("/logins/ray/remove")).hasStatus(302);
        assertThat(owner.isIn()).isTrue();
    }

    @Test
    void is_for_owners() {
        assertThat(new Visitor(doors, "198.51.100.36")
                        .signIn("hand", GatewayTest.PASSWORD)
                        .get("/logins"))
                .hasStatus(403);
    }

    @Test
    void speaks_spanish() {
        assertThat(doors.as("owner", HttpMethod.GET, "/logins").header("Accept-Language", "es-MX"))
                .bodyText()
                .contains("Quién puede entrar", "dueño");
    }

    private void somebody(String login, Role role) {
        people.keep(new Person(login, passwords.encode(PASSWORD), role), TestGateway.NOW);
    }

    private Visitor owner() {
        return new Visitor(doors, "198.51.100.37").signIn("owner", GatewayTest.PASSWORD);
    }
}
