package yardlight.db.secret;

import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** Shared keys by name. */
@Repository
public class Secrets {

    private final SecretRows rows;
    private final Disk disk;

    Secrets(SecretRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    /**
     * The secret of this name; the first call for a name keeps what {@code fresh} gives. When two gateways call first at
     * once, both get the same.
     */
    public byte[] get(String name, Supplier<byte[]> fresh, Instant now) {
        return rows.findById(name).map(SecretRow::content).orElseGet(() -> make(name, fresh.get(), now));
    }

    /** All secrets of this name, the oldest first; empty before the first call of {@link #get} for it. */
    public List<Secret> generations(String name) {
        return rows.generations(name).stream().map(SecretRow::secret).toList();
    }

    /**
     * Puts another one beside those that there are; on disk when it returns.
     *
     * @param from since when it is the one to be used, to the millisecond
     */
    public void add(String name, byte[] content, Instant from) {
        disk.keep(() -> rows.saveAndFlush(new SecretRow(name + "." + from.toEpochMilli(), content, from)));
    }

    /** Forgets those that were followed by another one before this instant; on disk when it returns. */
    public void forgetFollowedBefore(String name, Instant end) {
        disk.keep(() -> {
            List<SecretRow> all = rows.generations(name);
            for (int i = 0; i + 1 < all.size() && all.get(i + 1).secret().from().isBefore(end); i++) {
                rows.delete(all.get(i));
            }
            return true;
        });
    }

    /** Puts another one in the place of all that there are; on disk when it returns. */
    public void replace(String name, byte[] content, Instant from) {
        disk.keep(() -> {
            rows.deleteAll(rows.generations(name));
            rows.flush();
            return rows.saveAndFlush(new SecretRow(name + "." + from.toEpochMilli(), content, from));
        });
    }

    private byte[] make(String name, byte[] content, Instant now) {
        try {
            return disk.keep(() -> rows.saveAndFlush(new SecretRow(name, content, now)))
                    .content();
        } catch (DataIntegrityViolationException another) {
            return rows.findById(name).map(SecretRow::content).orElseThrow(() -> another);
        }
    }
}
