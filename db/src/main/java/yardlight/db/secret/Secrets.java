package yardlight.db.secret;

import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.disk.Disk;

/** Shared keys by name. */
@Repository
public class Secrets {

    private static final String SELECT = "select content from secret where name = ?";
    private static final String ADD = "insert into secret (name, content, created_at) values (?, ?, ?)";

    private final JdbcTemplate jdbc;
    private final Disk disk;

    Secrets(JdbcTemplate jdbc, Disk disk) {
        this.jdbc = jdbc;
        this.disk = disk;
    }

    /**
     * The secret of this name; the first call for a name keeps what {@code fresh} gives. When two gateways call first at
     * once, both get the same.
     */
    public byte[] get(String name, Supplier<byte[]> fresh, Instant now) {
        return find(name).orElseGet(() -> make(name, fresh.get(), now));
    }

    private byte[] make(String name, byte[] content, Instant now) {
        String text = Base64.getEncoder().encodeToString(content);
        try {
            disk.keep(() -> jdbc.update(ADD, name, text, Column.stored(now)));
            return content;
        } catch (DataIntegrityViolationException another) {
            return find(name).orElseThrow(() -> another);
        }
    }

    private Optional<byte[]> find(String name) {
        return jdbc.queryForList(SELECT, String.class, name).stream()
                .findFirst()
                .map(Base64.getDecoder()::decode);
    }
}
