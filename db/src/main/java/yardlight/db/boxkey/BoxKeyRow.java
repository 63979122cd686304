package yardlight.db.boxkey;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

@Entity
@Table(name = "box_key")
class BoxKeyRow {

    @Id
    private String id;

    private String box;

    @Column(name = "key_hash")
    private String hash;

    @Column(name = "created_at")
    private Instant createdAt;

    @Column(name = "ends_at")
    private Instant endsAt;

    @Column(name = "revoked_at")
    private Instant revokedAt;

    @Column(name = "used_at")
    private Instant usedAt;

    BoxKeyRow() {}

    BoxKeyRow(BoxKey key) {
        this.id = key.id();
        this.box = key.box();
        this.hash = key.hash();
        this.createdAt = key.createdAt();
        this.endsAt = key.endsAt().orElse(null);
        this.revokedAt = key.revokedAt().orElse(null);
        this.usedAt = key.usedAt().orElse(null);
    }

    BoxKey key() {
        return new BoxKey(
                id,
                box,
                hash,
                createdAt,
                Optional.ofNullable(endsAt),
                Optional.ofNullable(revokedAt),
                Optional.ofNullable(usedAt));
    }
}
