package yardlight.db.secret;

import java.time.Instant;
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

    private byte[] make(String name, byte[] content, Instant now) {
        try {
            return disk.keep(() -> rows.saveAndFlush(new SecretRow(name, content, now)))
                    .content();
        } catch (DataIntegrityViolationException another) {
            return rows.findById(name).map(SecretRow::content).orElseThrow(() -> another);
        }
    }
}
