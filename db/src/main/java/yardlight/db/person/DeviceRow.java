package yardlight.db.person;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.springframework.data.domain.Persistable;

@Entity
@Table(name = "device")
class DeviceRow implements Persistable<String> {

    @Id
    private String id;

    private String login;

    private String way;

    private String address;

    private String agent;

    @Column(name = "first_at")
    private Instant firstAt;

    @Column(name = "last_at")
    private Instant lastAt;

    @Column(name = "seen_at")
    private Instant seenAt;

    DeviceRow() {}

    DeviceRow(Device device, Instant seenAt) {
        this.id = device.id();
        this.login = device.login();
        this.way = device.way();
        this.address = device.address();
        this.agent = device.agent();
        this.firstAt = device.firstAt();
        this.lastAt = device.lastAt();
        this.seenAt = seenAt;
    }

    Device device() {
        return new Device(id, login, way, address, agent, firstAt, lastAt);
    }

    @Override
    public String getId() {
        return id;
    }

    /** Rows are only ever added: what changes is changed by a statement. */
    @Override
    public boolean isNew() {
        return true;
    }
}
