package yardlight.db.journal;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import javax.sql.DataSource;
import yardlight.db.disk.Vendor;

/**
 * Where everything that changes is written. There is one writer at a time over all gateways of a database: each
 * transaction begins by locking the one row of table {@code lane}. Not for use by several threads.
 */
public final class Journal implements AutoCloseable {

    private final DataSource source;
    private final Vendor vendor;
    private Optional<Connection> connection = Optional.empty();
    private Optional<Pen> pen = Optional.empty();
    private final Memory memory = new Memory();

    public Journal(DataSource source) {
        this.source = source;
        this.vendor = Vendor.of(source);
    }

    /**
     * Begins a transaction; waits while another gateway has one.
     *
     * @throws JournalTrouble when the database does not answer
     */
    public Writing begin() {
        try {
            return new Writing(pen(), memory, this::drop);
        } catch (SQLException e) {
            drop();
            throw new JournalTrouble("connecting", e);
        } catch (JournalTrouble e) {
            drop();
            throw e;
        }
    }

    private Pen pen() throws SQLException {
        if (pen.isEmpty()) {
            Connection fresh = source.getConnection();
            connection = Optional.of(fresh);
            try (Statement statement = fresh.createStatement()) {
                for (String setting : vendor.writerStatements()) {
                    statement.execute(setting);
                }
            }
            fresh.setAutoCommit(false);
            pen = Optional.of(new Pen(fresh, vendor.syncStatement()));
        }
        return pen.get();
    }

    /**
     * Gives up the connection after trouble. H2 closes the whole database at the first write that fails, which kills
     * every pooled connection with it; so they all go, and the next one opens the database again.
     */
    private void drop() {
        if (vendor == Vendor.H2) {
            pool().map(HikariDataSource::getHikariPoolMXBean).ifPresent(HikariPoolMXBean::softEvictConnections);
        }
        close();
    }

    /** Gives the connection up for good: the pool is not to hand out one with a writer's settings. */
    @Override
    public void close() {
        memory.forget();
        pen = Optional.empty();
        connection.ifPresent(
                held -> pool().ifPresentOrElse(pool -> pool.evictConnection(held), () -> closeQuietly(held)));
        connection = Optional.empty();
    }

    private Optional<HikariDataSource> pool() {
        try {
            return source.isWrapperFor(HikariDataSource.class)
                    ? Optional.of(source.unwrap(HikariDataSource.class))
                    : Optional.empty();
        } catch (SQLException e) {
            return Optional.empty();
        }
    }

    private static void closeQuietly(Connection broken) {
        try {
            broken.close();
        } catch (SQLException e) {
            // It is broken: that it cannot be closed either is no news.
        }
    }
}
