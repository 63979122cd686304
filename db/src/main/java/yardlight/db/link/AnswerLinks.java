package yardlight.db.link;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** The links of all texts. One need not be kept before it is used: a signed token says itself what it is. */
@Repository
public class AnswerLinks {

    private final AnswerLinkRows rows;
    private final Disk disk;

    AnswerLinks(AnswerLinkRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    public Optional<AnswerLink> byHash(String tokenHash) {
        return rows.findById(tokenHash).map(AnswerLinkRow::link);
    }

    /** Keeps the link unless it is kept already; on disk when it returns. */
    public void keep(String tokenHash, String notice, Instant expiresAt) {
        disk.keep(() -> rows.findById(tokenHash).isPresent()
                ? Optional.empty()
                : Optional.of(rows.save(new AnswerLinkRow(tokenHash, notice, expiresAt))));
    }

    /**
     * Uses the link up; on disk when it returns. Of several calls at once one gets true.
     *
     * @return false when there is no such link, when it was used before, or when it expires at or before {@code now}
     */
    public boolean use(String tokenHash, Instant now) {
        return disk.keep(() -> rows.use(tokenHash, now)) > 0;
    }
}
