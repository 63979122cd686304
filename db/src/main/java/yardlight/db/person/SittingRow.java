package yardlight.db.person;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "sitting")
class SittingRow {

    @Id
    private String id;

    private String login;

    private String address;

    private String agent;

    @Column(name = "began_at")
    private Instant beganAt;

    @Column(name = "heard_at")
    private Instant heardAt;

    SittingRow() {}

    SittingRow(Sitting sitting) {
        this.id = sitting.id();
        this.login = sitting.login();
        this.address = sitting.address();
        this.agent = sitting.agent();
        this.beganAt = sitting.beganAt();
        this.heardAt = sitting.heardAt();
    }

    Sitting sitting() {
        return new Sitting(id, login, address, agent, beganAt, heardAt);
    }
}
