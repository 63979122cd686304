package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.crypto.password.PasswordEncoder;
import yardlight.db.alarm.Told;
import yardlight.db.log.LogFilter;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.db.person.Device;
import yardlight.db.person.Devices;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.escalation.notice.Purpose;
import yardlight.gateway.Doors;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.browser.SharedGateway;

/** A sign-in with something new is a text to whoever it is and to the owner, as far as the setup has them. */
class SignInTextIT extends SharedGateway {

    private final People people;
    private final Devices devices;
    private final Told told;
    private final LogLines log;
    private final PasswordEncoder passwords;

    @Autowired
    SignInTextIT(People people, Devices devices, Told told, LogLines log, PasswordEncoder passwords) {
        this.people = people;
        this.devices = devices;
        this.told = told;
        this.log = log;
        this.passwords = passwords;
    }

    @AfterEach
    void as_it_was() {
        people.change("owner", owner -> owner.of(Optional.empty()));
        people.remove("ben");
    }

    @Test
    void is_told_to_whoever_it_is_by_the_name_of_the_contact_and_to_the_owner_by_the_contact_that_was_chosen() {
        people.keep(new Person("ben", passwords.encode(GatewayTest.PASSWORD), Role.READER), Instant.EPOCH);
        devices.meet(new Device("first-of-ben", "ben", "browser", "192.0.2.7", "", Instant.EPOCH, Instant.EPOCH));
        people.change("owner", owner -> owner.of(Optional.of("ana")));

        assertThat(web.get("/api/v1/alarms", "Authorization", Doors.basic("ben"))
                        .statusCode())
                .isEqualTo(200);

        await().atMost(Duration.ofSeconds(10)).until(() -> !texts("ben").isEmpty());
        assertThat(texts("ben"))
                .singleElement()
                .asString()
                .startsWith("Yardlight, no alarm: ben signed in with a new program from 127.0.0.1, ")
                .endsWith(" Not you? Change your password.");
        assertThat(texts("ana")).singleElement().asString().endsWith(" Not known to you? End their sessions.");
        assertThat(log.after(0, LogFilter.EVERYTHING, 100_000).stream().map(LogLine::words))
                .anyMatch(line -> line.startsWith("ben signed in with a program that is new, from 127.0.0.1"));
    }

    private List<String> texts(String contact) {
        return told.to(contact, Instant.EPOCH, 100).stream()
                .map(Told.Sent::notice)
                .filter(notice -> notice.purpose() == Purpose.SIGN_IN)
                .map(notice -> notice.text())
                .toList();
    }
}
