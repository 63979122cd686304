package yardlight.db.disk;

import java.util.function.Supplier;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Does the small writes beside the lane: one transaction, and back only when it survives a power cut. */
@Component
public class Disk {

    private final Vendor vendor;
    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;

    Disk(DataSource source, PlatformTransactionManager transactions) {
        this.vendor = Vendor.of(source);
        this.jdbc = new JdbcTemplate(source);
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Runs the work in a transaction of its own, commits, and waits for the disk. */
    public <T> T keep(Supplier<T> work) {
        T result = transaction.execute(status -> work.get());
        vendor.syncStatement().ifPresent(jdbc::execute);
        return result;
    }
}
