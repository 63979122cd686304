package yardlight.db.incoming;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "receipt")
class ReceiptRow {

    @Id
    private String id;

    private String channel;

    private String reference;

    private String fate;

    private String detail;

    @Column(name = "said_at")
    private Instant saidAt;

    @Column(name = "kept_at")
    private Instant keptAt;

    @Column(name = "heeded_at")
    private Instant heededAt;

    ReceiptRow() {}

    ReceiptRow(KeptReceipt receipt, Instant keptAt) {
        this.id = receipt.id();
        this.channel = receipt.channel();
        this.reference = receipt.reference();
        this.fate = receipt.fate();
        this.detail = receipt.detail();
        this.saidAt = receipt.saidAt();
        this.keptAt = keptAt;
    }
}
