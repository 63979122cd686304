package yardlight.db.secret;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Base64;

@Entity
@Table(name = "secret")
class SecretRow {

    @Id
    private String name;

    private String content;

    @Column(name = "created_at")
    private Instant createdAt;

    SecretRow() {}

    SecretRow(String name, byte[] content, Instant createdAt) {
        this.name = name;
        this.content = Base64.getEncoder().encodeToString(content);
        this.createdAt = createdAt;
    }

    Secret secret() {
        return new Secret(content(), createdAt);
    }

    byte[] content() {
        return Base64.getDecoder().decode(content);
    }
}
