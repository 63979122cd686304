package yardlight.db.person;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Locale;

@Entity
@Table(name = "person")
class PersonRow {

    @Id
    private String login;

    @Column(name = "password_hash")
    private String passwordHash;

    private String role;

    @Column(name = "created_at", updatable = false)
    private Instant createdAt;

    PersonRow() {}

    PersonRow(Person person, Instant createdAt) {
        this.login = person.login();
        this.passwordHash = person.passwordHash();
        this.role = person.role().word();
        this.createdAt = createdAt;
    }

    Person person() {
        return new Person(login, passwordHash, Role.valueOf(role.toUpperCase(Locale.ROOT)));
    }
}
