package yardlight.gateway.logins;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;

/** Everybody's own page. */
@GatewayTest
class MePageTest {

    private static final String PASSWORD = "gate hinge rust oil";
    private static final String OTHER = "lamp over the wash bay";

    private final Doors doors;
    private final People people;
    private final String hash;

    MePageTest(Doors doors, People people, PasswordEncoder passwords) {
        this.doors = doors;
        this.people = people;
        this.hash = passwords.encode(PASSWORD);
    }

    @BeforeEach
    void somebody() {
        people.keep(new Person("quinn", hash, Role.READER), TestGateway.NOW);
    }

    @Test
    void changes_the_password_and_ends_every_other_session_at_once() {
        Visitor here = new Visitor(doors, "198.51.100.40").signIn("quinn", PASSWORD);
        Visitor elsewhere = new Visitor(doors, "198.51.100.41").signIn("quinn", PASSWORD);

        assertThat(here.post("/me/password", "current", PASSWORD, "password", OTHER))
                .hasHeader("Location", "/me?changed");

        assertThat(here.isIn()).isTrue();
        assertThat(elsewhere.isIn()).isFalse();
        assertThat(elsewhere.trySignIn("quinn", PASSWORD)).hasHeader("Location", "/login?wrong");
        assertThat(elsewhere.signIn("quinn", OTHER).isIn()).isTrue();
    }

    @Test
    void asks_for_the_password_that_they_have_and_says_beside_the_field_what_is_wrong() {
        Visitor quinn = new Visitor(doors, "198.51.100.42").signIn("quinn", PASSWORD);

        assertThat(quinn.post("/me/password", "current", "not this one at all", "password", "quinn quinn quinn"))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"current-wrong\"", "id=\"password-wrong\"", "This is the name of the login")
                .doesNotContain("not this one at all", "quinn quinn");
        assertThat(quinn.trySignIn("quinn", PASSWORD)).hasHeader("Location", "/");
    }

    @Test
    void shows_where_they_are_signed_in_and_signs_out_everywhere_else() {
        Visitor here = new Visitor(doors, "198.51.100.43").signIn("quinn", PASSWORD);
        Visitor elsewhere = new Visitor(doors, "198.51.100.44").signIn("quinn", PASSWORD);
        assertThat(here.get("/me")).bodyText().contains("198.51.100.43", "198.51.100.44", "Lantern/1.0");

        assertThat(here.post("/me/sessions", "current", "not this one at all"))
                .hasStatus(422)
                .bodyText()
                .contains("id=\"end-wrong\"");
        assertThat(elsewhere.isIn()).isTrue();

        assertThat(here.post("/me/sessions", "current", PASSWORD)).hasHeader("Location", "/me?ended");

        assertThat(elsewhere.isIn()).isFalse();
        assertThat(here.get("/me")).hasStatus(200).bodyText().doesNotContain("198.51.100.44");
    }

    @Test
    void asks_for_another_password_while_theirs_is_one_that_the_rules_are_against() {
        people.keep(new Person("quinn", hash, Role.READER, java.util.Optional.empty(), true), TestGateway.NOW);
        Visitor quinn = new Visitor(doors, "198.51.100.45").signIn("quinn", PASSWORD);
        assertThat(quinn.get("/me")).bodyText().contains("one that the rules are against");
        assertThat(quinn.get("/")).bodyText().contains("one that the rules are against");

        quinn.post("/me/password", "current", PASSWORD, "password", OTHER);

        assertThat(quinn.get("/me")).bodyText().doesNotContain("one that the rules are against");
    }
}
