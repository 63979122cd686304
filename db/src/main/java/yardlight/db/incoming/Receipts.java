package yardlight.db.incoming;

import java.time.Instant;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.disk.Disk;

/**
 * What carriers said later. A receipt may come before it is on record that the message was taken at all; it is kept, and
 * found to be about a notice as soon as that is on record.
 */
@Repository
public class Receipts {

    private static final String OPEN = "select r.id, a.notice, a.line, r.channel, r.fate, r.detail from receipt r"
            + " join attempt a on a.reference = r.reference and a.channel = r.channel and a.outcome = 'accepted'"
            + " where r.heeded_at is null and r.kept_at >= ? order by r.kept_at, r.id fetch first ? rows only";

    private final ReceiptRows rows;
    private final Disk disk;
    private final JdbcTemplate jdbc;

    Receipts(ReceiptRows rows, Disk disk, JdbcTemplate jdbc) {
        this.rows = rows;
        this.disk = disk;
        this.jdbc = jdbc;
    }

    /** Keeps it unless it was kept before; on disk when it returns. */
    public void keep(KeptReceipt receipt, Instant now) {
        disk.keep(() -> rows.findById(receipt.id()).isPresent() || rows.save(new ReceiptRow(receipt, now)) != null);
    }

    /** Receipts kept at this instant or later that are about a notice and have not been heeded, oldest first. */
    public List<Meant> open(Instant since, int most) {
        return jdbc.query(
                OPEN,
                (row, n) -> new Meant(
                        row.getString("id"),
                        row.getString("notice"),
                        row.getInt("line"),
                        row.getString("channel"),
                        row.getString("fate"),
                        row.getString("detail")),
                Column.stored(since),
                most);
    }

    /** The engine knows of it; on disk when it returns. */
    public void heeded(String id, Instant now) {
        disk.keep(() -> rows.heeded(id, now));
    }
}
