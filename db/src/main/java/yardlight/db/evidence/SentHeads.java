package yardlight.db.evidence;

import java.time.LocalDate;
import org.springframework.stereotype.Repository;

/** Which head was given to whom last. */
@Repository
public class SentHeads {

    private final SentHeadRows rows;

    SentHeads(SentHeadRows rows) {
        this.rows = rows;
    }

    /** Whether the address has one of that day, or of a later one. */
    public boolean isSent(String address, LocalDate day) {
        return rows.findById(address).filter(row -> !row.day().isBefore(day)).isPresent();
    }

    /**
     * A carrier took the head for this address.
     *
     * @param size of the log that it stands for
     */
    public void keep(String address, LocalDate day, long size) {
        rows.save(new SentHeadRow(address, day, size));
    }
}
