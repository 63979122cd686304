package yardlight.db.person;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

@Entity
@Table(name = "person")
class PersonRow {

    @Id
    private String login;

    @Column(name = "password_hash")
    private String passwordHash;

    private String role;

    private String contact;

    private boolean weak;

    @Column(name = "created_at", updatable = false)
    private Instant createdAt;

    PersonRow() {}

    PersonRow(Person person, Instant createdAt) {
        this.login = person.login();
        this.createdAt = createdAt;
        become(person);
    }

    final void become(Person person) {
        this.passwordHash = person.passwordHash();
        this.role = person.role().word();
        this.contact = person.contact().orElse(null);
        this.weak = person.weak();
    }

    Person person() {
        return new Person(login, passwordHash, Role.of(role), Optional.ofNullable(contact), weak);
    }
}
