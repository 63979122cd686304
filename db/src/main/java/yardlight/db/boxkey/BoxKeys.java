package yardlight.db.boxkey;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Slices;
import yardlight.db.disk.Disk;

/** The keys of all boxes. */
@Repository
public class BoxKeys {

    private static final String USED =
            "update box_key set used_at = ? where id = ? and (used_at is null or used_at < ?)";

    private final BoxKeyRows rows;
    private final JdbcTemplate jdbc;
    private final Disk disk;

    BoxKeys(BoxKeyRows rows, JdbcTemplate jdbc, Disk disk) {
        this.rows = rows;
        this.jdbc = jdbc;
        this.disk = disk;
    }

    /** The key with this hash, good or not. */
    public Optional<BoxKey> byHash(String hash) {
        return rows.byHash(hash).map(BoxKeyRow::key);
    }

    /** The key with this id, good or not. */
    public Optional<BoxKey> byId(String id) {
        return rows.findById(id).map(BoxKeyRow::key);
    }

    /** The keys that were revoked at this instant or later, and those that end then or later. */
    public List<BoxKey> endedSince(Instant since) {
        return Stream.concat(rows.revokedSince(since).stream(), rows.endingSince(since).stream())
                .map(BoxKeyRow::key)
                .toList();
    }

    /** The keys of a box, oldest first, revoked ones too. */
    public List<BoxKey> of(String box) {
        return rows.of(box).stream().map(BoxKeyRow::key).toList();
    }

    /** Adds a key; on disk when it returns. */
    public void add(BoxKey key) {
        disk.keep(() -> rows.save(new BoxKeyRow(key)));
    }

    /** Adds a key and lets the box's others end, unless they end before; both or neither is on disk when it returns. */
    public void addInPlaceOfOthers(BoxKey key, Instant end) {
        disk.keep(() -> {
            rows.saveAndFlush(new BoxKeyRow(key));
            return rows.endOthers(key.box(), key.id(), end);
        });
    }

    /** Revokes a key of this box; on disk when it returns. False when the box has no such key that is still good. */
    public boolean revoke(String box, String id, Instant now) {
        return disk.keep(() -> rows.revoke(box, id, now)) > 0;
    }

    /**
     * All boxes may have posted since the last time. So it is stored a thousand at a time, each in a transaction of its own, and in
     * the order of the ids, so that two gateways that do this at the same time do not wait for each other.
     *
     * @param uses when keys were last used, by their ids; what is older than what is known changes nothing
     */
    public void used(Map<String, Instant> uses) {
        List<String> ids = uses.keySet().stream().sorted().toList();
        for (int from = 0; from < ids.size(); from += Slices.SIZE) {
            List<Object[]> slice = ids.subList(from, Math.min(ids.size(), from + Slices.SIZE)).stream()
                    .map(id -> new Object[] {Column.stored(uses.get(id)), id, Column.stored(uses.get(id))})
                    .toList();
            disk.keep(() -> jdbc.batchUpdate(USED, slice));
        }
    }
}
