package yardlight.db.person;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

@Entity
@Table(name = "invitation")
class InvitationRow {

    @Id
    private String id;

    @Column(name = "token_hash")
    private String tokenHash;

    private String role;

    private String contact;

    @Column(name = "invited_by")
    private String by;

    @Column(name = "invited_at")
    private Instant invitedAt;

    @Column(name = "expires_at")
    private Instant expiresAt;

    @Column(name = "used_at")
    private Instant usedAt;

    @Column(name = "used_by")
    private String usedBy;

    InvitationRow() {}

    InvitationRow(Invitation invitation) {
        this.id = invitation.id();
        this.tokenHash = invitation.tokenHash();
        this.role = invitation.role().word();
        this.contact = invitation.contact().orElse(null);
        this.by = invitation.by();
        this.invitedAt = invitation.invitedAt();
        this.expiresAt = invitation.expiresAt();
    }

    Invitation invitation() {
        return new Invitation(
                id,
                tokenHash,
                Role.of(role),
                Optional.ofNullable(contact),
                by,
                invitedAt,
                expiresAt,
                Optional.ofNullable(usedAt));
    }
}
