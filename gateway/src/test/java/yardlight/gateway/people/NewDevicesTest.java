package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpMethod;
import org.springframework.security.crypto.password.PasswordEncoder;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.escalation.Entry;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.Visitor;
import yardlight.gateway.lane.LogBook;

/** A sign-in from a new device is told to the owner. */
@GatewayTest
class NewDevicesTest {

    private static final String PASSWORD = "gate hinge rust oil";

    private final Doors doors;
    private final People people;
    private final LogLines log;
    private final LogBook book;
    private final String hash;

    NewDevicesTest(Doors doors, People people, LogLines log, LogBook book, PasswordEncoder passwords) {
        this.doors = doors;
        this.people = people;
        this.log = log;
        this.book = book;
        this.hash = passwords.encode(PASSWORD);
    }

    @BeforeEach
    void nothing_new() {
        owner().post("/logins/devices");
    }

    @Test
    void are_told_to_the_owner_on_every_page_until_one_has_seen_them() {
        somebody("pam");
        new Visitor(doors, "198.51.100.60").signIn("pam", PASSWORD);
        Visitor owner = owner();
        owner.post("/logins/devices");
        assertThat(owner.get("/")).bodyText().doesNotContain("signed in with a new device");

        new Visitor(doors, "198.51.100.61").signIn("pam", PASSWORD);

        assertThat(owner.get("/")).bodyText().contains("Somebody signed in with a new device.");
        assertThat(owner.get("/logins")).bodyText().contains("a browser, 0 s ago, from 198.51.100.61", "Lantern/1.0");
        assertThat(new Visitor(doors, "198.51.100.62")
                        .signIn("hand", GatewayTest.PASSWORD)
                        .get("/"))
                .bodyText()
                .doesNotContain("signed in with a new device");
        assertThat(lines())
                .contains("pam signed in with a browser that is new, from 198.51.100.61: Lantern/1.0")
                .contains("pam signed in for the first time, with a browser, from 198.51.100.60: Lantern/1.0");

        owner.post("/logins/devices");

        assertThat(owner.get("/")).bodyText().doesNotContain("signed in with a new device");
    }

    @Test
    void are_not_those_that_come_again_also_from_elsewhere() {
        somebody("oli");
        Visitor oli = new Visitor(doors, "198.51.100.63").signIn("oli", PASSWORD);
        String cookie = oli.cookie("device-oli").getValue();

        oli.post("/logout");
        oli.signIn("oli", PASSWORD);

        assertThat(oli.cookie("device-oli").getValue()).isEqualTo(cookie);
        assertThat(lines()).filteredOn(line -> line.startsWith("oli signed in")).hasSize(1);
    }

    /** OWASP ASVS 5.0, 3.3: HttpOnly, SameSite; Secure wherever the page came by TLS. 128 bits and a MAC. */
    @Test
    void are_known_by_a_cookie_that_scripts_and_other_sites_do_not_get() {
        somebody("nat");
        Visitor nat = new Visitor(doors, "198.51.100.64").signIn("nat", PASSWORD);

        var cookie = nat.cookie("device-nat");
        assertThat(cookie.getValue()).matches("[A-Za-z0-9_-]{22}\\.[A-Za-z0-9_-]{43}");
        assertThat(cookie.isHttpOnly()).isTrue();
        assertThat(cookie.getAttribute("SameSite")).isEqualTo("Strict");
        assertThat(cookie.getPath()).isEqualTo("/");
        assertThat(cookie.getMaxAge()).isEqualTo(400 * 24 * 3600);
    }

    @Test
    void are_told_of_programs_by_their_address() {
        somebody("moe");
        basic("moe", "198.51.100.65");
        basic("moe", "198.51.100.65");
        basic("moe", "198.51.100.66");

        assertThat(lines())
                .filteredOn(line -> line.startsWith("moe signed in"))
                .containsExactly(
                        "moe signed in for the first time, with a program, from 198.51.100.65: curl/8",
                        "moe signed in with a program that is new, from 198.51.100.66: curl/8");
    }

    private void basic(String login, String address) {
        String pair = Base64.getEncoder().encodeToString((login + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8));
        assertThat(doors.stranger(HttpMethod.GET, "/api/v1/alarms")
                        .header("Authorization", "Basic " + pair)
                        .header("User-Agent", "curl/8")
                        .with(request -> {
                            request.setRemoteAddr(address);
                            return request;
                        }))
                .hasStatus(200);
    }

    private void somebody(String login) {
        people.keep(new Person(login, hash, Role.READER), TestGateway.NOW);
    }

    private Visitor owner() {
        return new Visitor(doors, "198.51.100.67").signIn("owner", GatewayTest.PASSWORD);
    }

    /** The lane writes a line a moment after it was handed in; one more, that is waited for, comes behind it. */
    private List<String> lines() {
        book.put(new Entry(Entry.What.LOGIN, Map.of(), "the last one")).join();
        return log.after(0, LogFilter.EVERYTHING, 100_000).stream()
                .map(LogLine::words)
                .toList();
    }
}
