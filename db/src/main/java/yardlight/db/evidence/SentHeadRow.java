package yardlight.db.evidence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;

@Entity
@Table(name = "sent_head")
class SentHeadRow {

    @Id
    private String address;

    @Column(name = "sent_day")
    private LocalDate day;

    @Column(name = "log_size")
    private long size;

    SentHeadRow() {}

    SentHeadRow(String address, LocalDate day, long size) {
        this.address = address;
        this.day = day;
        this.size = size;
    }

    LocalDate day() {
        return day;
    }
}
