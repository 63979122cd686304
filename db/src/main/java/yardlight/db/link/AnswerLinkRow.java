package yardlight.db.link;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

@Entity
@Table(name = "link")
class AnswerLinkRow {

    @Id
    @Column(name = "token_hash")
    private String tokenHash;

    private String notice;

    @Column(name = "expires_at")
    private Instant expiresAt;

    @Column(name = "used_at")
    private Instant usedAt;

    AnswerLinkRow() {}

    AnswerLinkRow(String tokenHash, String notice, Instant expiresAt) {
        this.tokenHash = tokenHash;
        this.notice = notice;
        this.expiresAt = expiresAt;
    }

    AnswerLink link() {
        return new AnswerLink(tokenHash, notice, expiresAt, Optional.ofNullable(usedAt));
    }
}
