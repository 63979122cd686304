package yardlight.db.incoming;

import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** Texts that came in, each with its answer until that is on its way. */
@Repository
public class IncomingTexts {

    private final IncomingTextRows rows;
    private final Disk disk;

    IncomingTexts(IncomingTextRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    /** Whether this text was kept before. */
    public boolean known(String id) {
        return rows.findById(id).isPresent();
    }

    /** Keeps a text with its answer; on disk when it returns. */
    public void keep(IncomingText text) {
        disk.keep(() -> rows.save(new IncomingTextRow(text)));
    }

    /** Texts that came at this instant or later, whose answer has not gone out and which nobody has claimed; oldest first. */
    public List<IncomingText> open(Instant since, Instant now, int most) {
        return rows.open(since, now, most).stream().map(IncomingTextRow::text).toList();
    }

    /** Claims the answer until then. Of several gateways one gets true. */
    public boolean claim(String id, Instant now, Instant until) {
        return disk.keep(() -> rows.claim(id, now, until)) > 0;
    }

    /** The answer is off our hands; on disk when it returns. */
    public void answered(String id, Instant now) {
        disk.keep(() -> rows.answered(id, now));
    }
}
