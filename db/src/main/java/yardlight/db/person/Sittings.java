package yardlight.db.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** Who is signed in on pages, on whichever gateway of the database. */
@Repository
public class Sittings {

    private final SittingRows rows;
    private final Disk disk;

    Sittings(SittingRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    /** The one with this id, as long as nobody has ended it. */
    public Optional<Sitting> byId(String id) {
        return rows.findById(id).map(SittingRow::sitting);
    }

    /** Those heard after {@code heard} and begun after {@code began}, oldest first. */
    public List<Sitting> since(Instant heard, Instant began) {
        return rows.open(heard, began).stream().map(SittingRow::sitting).toList();
    }

    /** Begins one, and forgets those that were neither heard after {@code heard} nor begun after {@code began}. */
    public void begin(Sitting sitting, Instant heard, Instant began) {
        disk.keep(() -> {
            rows.endOld(heard, began);
            return rows.save(new SittingRow(sitting));
        });
    }

    /** Something was asked for in it. */
    public void hear(String id, Instant now) {
        disk.keep(() -> rows.hear(id, now));
    }

    public void end(String id) {
        disk.keep(() -> rows.end(id));
    }

    /**
     * Ends those of a login; on disk when it returns.
     *
     * @param besides id of one that goes on; none with this id when all are to end
     * @return how many there were
     */
    public int endOthers(String login, String besides) {
        return disk.keep(() -> rows.endOthers(login, besides));
    }
}
