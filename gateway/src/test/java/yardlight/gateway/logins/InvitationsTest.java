package yardlight.gateway.logins;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.db.person.Invitation;
import yardlight.db.person.Invitations;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.escalation.Entry;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;
import yardlight.gateway.lane.LogBook;

/** People are invited by a link that expires. */
@GatewayTest
class InvitationsTest {

    private static final String PASSWORD = "gate hinge rust oil";

    private final Doors doors;
    private final People people;
    private final Invitations invitations;
    private final LogLines log;
    private final LogBook book;

    InvitationsTest(Doors doors, People people, Invitations invitations, LogLines log, LogBook book) {
        this.doors = doors;
        this.people = people;
        this.invitations = invitations;
        this.log = log;
        this.book = book;
    }

    @Test
    void lead_to_a_login_of_the_invited_one_s_own_choice() throws Exception {
        String link = invite("{\"role\": \"hand\", \"contact\": \"ana\"}");
        var ana = new Visitor(doors, "198.51.100.20");

        assertThat(ana.get(link))
                .hasStatus(200)
                .bodyText()
                .contains("owner invites you to Yardlight as hand", "value=\"ana\"");
        assertThat(ana.post(link, "login", "ana-r", "password", PASSWORD))
                .hasStatus(302)
                .hasHeader("Location", "/login?joined");

        assertThat(ana.signIn("ana-r", PASSWORD).isIn()).isTrue();
        assertThat(people.byLogin("ana-r")).hasValueSatisfying(person -> {
            assertThat(person.role()).isEqualTo(Role.HAND);
            assertThat(person.contact()).contains("ana");
        });
        assertThat(lines())
                .contains(
                        "owner invited ana as hand, until 2026-12-02T08:13:00Z",
                        "ana-r joined as hand, invited by owner");
    }

    @Test
    void are_not_used_up_by_whoever_only_opens_the_link() throws Exception {
        String link = invite("{\"role\": \"reader\"}");

        for (int scans = 0; scans < 3; scans++) {
            assertThat(new Visitor(doors, "198.51.100.21").get(link)).hasStatus(200);
        }

        assertThat(new Visitor(doors, "198.51.100.21").post(link, "login", "scanned", "password", PASSWORD))
                .hasHeader("Location", "/login?joined");
    }

    @Test
    void work_once() throws Exception {
        String link = invite("{\"role\": \"reader\"}");
        new Visitor(doors, "198.51.100.22").post(link, "login", "first-here", "password", PASSWORD);

        var second = new Visitor(doors, "198.51.100.23");
        assertThat(second.get(link)).hasStatus(410);
        assertThat(second.post(link, "login", "second-here", "password", PASSWORD))
                .hasStatus(410);
        assertThat(people.byLogin("second-here")).isEmpty();
    }

    @Test
    void expire_after_seven_days() {
        Instant now = TestGateway.NOW;
        String hash = "a".repeat(64);
        invitations.add(new Invitation(
                "old",
                hash,
                Role.HAND,
                Optional.empty(),
                "owner",
                now.minus(Duration.ofDays(7)),
                now,
                Optional.empty()));

        assertThat(invitations.byHash(hash).orElseThrow().isOpen(now)).isFalse();
        assertThat(invitations.byHash(hash).orElseThrow().isOpen(now.minusMillis(1)))
                .isTrue();
        assertThat(invitations.use(hash, new Person("late", "x", Role.HAND), now))
                .isEqualTo(Invitations.Use.GONE);
        assertThat(people.byLogin("late")).isEmpty();
    }

    @Test
    void can_be_taken_back() throws Exception {
        MvcTestResult made = post("{\"role\": \"reader\"}");
        String link = json(made).get("link").asString();

        assertThat(doors.as(
                        "owner",
                        HttpMethod.DELETE,
                        "/api/v1/invitations/" + json(made).get("id").asString()))
                .hasStatus(204);

        assertThat(new Visitor(doors, "198.51.100.24").get(path(link))).hasStatus(404);
    }

    /** 128 random bits in 22 letters, kept as a SHA-256: OWASP ASVS 5.0 asks for 128 bits of a token (7.2.3). */
    @Test
    void have_a_token_that_cannot_be_guessed_and_is_not_kept() throws Exception {
        String link = json(post("{\"role\": \"reader\"}")).get("link").asString();

        assertThat(link).matches("https://yardlight\\.example/join/[A-Za-z0-9_-]{22}");
        String token = link.substring(link.lastIndexOf('/') + 1);
        assertThat(doors.as("owner", HttpMethod.GET, "/api/v1/invitations"))
                .bodyText()
                .contains("\"expiresAt\":\"2026-12-02T08:13:00Z\"")
                .doesNotContain(token);
        assertThat(invitations.open(TestGateway.NOW))
                .extracting(Invitation::tokenHash)
                .doesNotContain(token);
    }

    @ParameterizedTest
    @ValueSource(strings = {"short", "AAAAAAAAAAAAAAAAAAAAAA", "AAAAAAAAAAAAAAAAAAAAA."})
    void that_nobody_made_lead_nowhere(String token) {
        assertThat(new Visitor(doors, "198.51.100.25").get("/join/" + token)).hasStatus(404);
    }

    @Test
    void keep_what_was_typed_and_say_beside_the_field_what_is_wrong() throws Exception {
        String link = invite("{\"role\": \"reader\"}");
        var visitor = new Visitor(doors, "198.51.100.26");

        assertThat(visitor.post(link, "login", "Zoe Q", "password", "short"))
                .hasStatus(422)
                .bodyText()
                .contains("value=\"Zoe Q\"", "id=\"login-wrong\"", "aria-describedby=\"login-wrong\"")
                .contains("id=\"password-wrong\"", "aria-invalid=\"true\"", "shorter than 15 characters")
                .doesNotContain("value=\"short\"");
        assertThat(visitor.post(link, "login", "owner", "password", PASSWORD))
                .hasStatus(422)
                .bodyText()
                .contains("Somebody has this login.");
        assertThat(visitor.post(link, "login", "zoe-q", "password", PASSWORD)).hasHeader("Location", "/login?joined");
    }

    @Test
    void name_only_roles_and_contacts_that_there_are() throws Exception {
        assertThat(post("{\"role\": \"king\", \"contact\": \"nobody\"}"))
                .hasStatus(422)
                .bodyText()
                .contains("/role", "/contact");
    }

    private String invite(String body) throws Exception {
        return path(json(post(body)).get("link").asString());
    }

    private static String path(String link) {
        return link.substring("https://yardlight.example".length());
    }

    private MvcTestResult post(String body) {
        return doors.as("owner", HttpMethod.POST, "/api/v1/invitations")
                .contentType("application/json")
                .content(body)
                .exchange();
    }

    private static JsonNode json(MvcTestResult result) throws Exception {
        return JsonMapper.builder().build().readTree(result.getResponse().getContentAsString());
    }

    /** The lane writes a line a moment after it was handed in; one more, that is waited for, comes behind it. */
    private List<String> lines() {
        book.put(new Entry(Entry.What.LOGIN, Map.of(), "the last one")).join();
        return log.after(0, LogFilter.EVERYTHING, 100_000).stream()
                .map(LogLine::words)
                .toList();
    }
}
