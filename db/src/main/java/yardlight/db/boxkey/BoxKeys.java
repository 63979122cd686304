package yardlight.db.boxkey;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** The keys of all boxes. */
@Repository
public class BoxKeys {

    private final BoxKeyRows rows;
    private final Disk disk;

    BoxKeys(BoxKeyRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    /** The key with this hash, revoked or not. */
    public Optional<BoxKey> byHash(String hash) {
        return rows.findByHash(hash).map(BoxKeyRow::key);
    }

    /** The hashes of the keys that were revoked at this instant or later. */
    public List<String> revokedSince(Instant since) {
        return rows.hashesRevokedSince(since);
    }

    /** The keys of a box, oldest first, revoked ones too. */
    public List<BoxKey> of(String box) {
        return rows.findByBoxOrderByCreatedAt(box).stream().map(BoxKeyRow::key).toList();
    }

    /** Adds a key; on disk when it returns. */
    public void add(BoxKey key) {
        disk.keep(() -> rows.save(new BoxKeyRow(key)));
    }

    /** Revokes a key of this box; on disk when it returns. False when the box has no such key that is still good. */
    public boolean revoke(String box, String id, Instant now) {
        return disk.keep(() -> rows.revoke(box, id, now)) > 0;
    }
}
