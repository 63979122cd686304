package yardlight.db.moving;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import javax.sql.DataSource;
import yardlight.db.disk.Vendor;

/** One transaction in which all that a gateway keeps is read or written, beside no other writer. */
final class LongTransaction implements AutoCloseable {

    /**
     * What makes it bear its length. On H2 a row comes when it is asked for, not all of them first. On PostgreSQL nothing
     * of what was written since it began is seen, and it is not cut off while the file is worked on.
     */
    private static final List<String> ON_H2 = List.of("set lazy_query_execution true");

    private static final List<String> ON_POSTGRESQL =
            List.of("set local idle_in_transaction_session_timeout = 0", "set local lock_timeout = '5s'");
    private static final String H2_AS_USUAL = "set lazy_query_execution false";

    /** The writer of every gateway begins with it. */
    private static final String LOCK = "select id from lane where id = 1 for update";

    private final Connection connection;
    private final Vendor vendor;
    private boolean committed;

    private LongTransaction(Connection connection, Vendor vendor) {
        this.connection = connection;
        this.vendor = vendor;
    }

    /** Begins one and keeps all writers out until it ends. */
    static LongTransaction begin(DataSource source) throws SQLException {
        Vendor vendor = Vendor.of(source);
        Connection connection = source.getConnection();
        var transaction = new LongTransaction(connection, vendor);
        try {
            connection.setAutoCommit(false);
            if (vendor == Vendor.POSTGRESQL) {
                connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            }
            for (String setting : vendor == Vendor.H2 ? ON_H2 : ON_POSTGRESQL) {
                transaction.run(setting);
            }
            transaction.run(LOCK);
            return transaction;
        } catch (SQLException e) {
            transaction.close();
            throw e;
        }
    }

    Connection connection() {
        return connection;
    }

    Vendor vendor() {
        return vendor;
    }

    /** Comes back when it survives a power cut. */
    void commit() throws SQLException {
        connection.commit();
        if (vendor.syncStatement().isPresent()) {
            run(vendor.syncStatement().get());
        }
        committed = true;
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** What was not committed is as if it had not been; what was stays, whatever becomes of the connection. */
    @Override
    public void close() throws SQLException {
        try (connection) {
            connection.rollback();
            if (vendor == Vendor.H2) {
                run(H2_AS_USUAL);
            }
            connection.setAutoCommit(true);
            if (vendor == Vendor.POSTGRESQL) {
                connection.setTransactionIsolation(Connection.TRANSACTION_READ_COMMITTED);
            }
        } catch (SQLException e) {
            if (!committed) {
                throw e;
            }
        }
    }
}
