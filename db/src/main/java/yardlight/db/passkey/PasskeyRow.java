package yardlight.db.passkey;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Base64;

@Entity
@Table(name = "passkey")
class PasskeyRow {

    @Id
    private String id;

    private String handle;

    private String label;

    @Column(name = "public_key")
    private String publicKey;

    private long uses;

    private boolean verified;

    private String transports;

    @Column(name = "may_be_copied")
    private boolean mayBeCopied;

    @Column(name = "is_copied")
    private boolean isCopied;

    private String attestation;

    @Column(name = "client_data")
    private String clientData;

    @Column(name = "created_at")
    private Instant createdAt;

    @Column(name = "last_used_at")
    private Instant lastUsedAt;

    PasskeyRow() {}

    PasskeyRow(Passkey passkey) {
        this.id = passkey.id();
        this.handle = passkey.handle();
        this.label = passkey.label();
        this.publicKey = written(passkey.publicKey());
        this.uses = passkey.uses();
        this.verified = passkey.verified();
        this.transports = passkey.transports();
        this.mayBeCopied = passkey.mayBeCopied();
        this.isCopied = passkey.isCopied();
        this.attestation = written(passkey.attestation());
        this.clientData = written(passkey.clientData());
        this.createdAt = passkey.createdAt();
        this.lastUsedAt = passkey.lastUsedAt();
    }

    Passkey passkey() {
        return new Passkey(
                id,
                handle,
                label,
                read(publicKey),
                uses,
                verified,
                transports,
                mayBeCopied,
                isCopied,
                read(attestation),
                read(clientData),
                createdAt,
                lastUsedAt);
    }

    private static String written(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private static byte[] read(String text) {
        return Base64.getDecoder().decode(text);
    }
}
