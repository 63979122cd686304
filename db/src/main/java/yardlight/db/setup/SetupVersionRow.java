package yardlight.db.setup;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "setup_version")
class SetupVersionRow {

    @Id
    private int version;

    private String document;

    @Column(name = "stored_at")
    private Instant storedAt;

    @Column(name = "stored_by")
    private String storedBy;

    SetupVersionRow() {}

    SetupVersion version() {
        return new SetupVersion(version, document, storedAt, storedBy);
    }
}
