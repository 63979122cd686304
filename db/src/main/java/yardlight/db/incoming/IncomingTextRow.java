package yardlight.db.incoming;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "incoming_text")
class IncomingTextRow {

    @Id
    private String id;

    private String channel;

    private String sender;

    private String words;

    @Column(name = "received_at")
    private Instant receivedAt;

    private String answer;

    @Column(name = "claimed_until")
    private Instant claimedUntil;

    @Column(name = "answered_at")
    private Instant answeredAt;

    IncomingTextRow() {}

    IncomingTextRow(IncomingText text) {
        this.id = text.id();
        this.channel = text.channel();
        this.sender = text.sender();
        this.words = text.words();
        this.receivedAt = text.receivedAt();
        this.answer = text.answer();
        this.answeredAt = text.answer().isEmpty() ? text.receivedAt() : null;
    }

    IncomingText text() {
        return new IncomingText(id, channel, sender, words, receivedAt, answer);
    }
}
