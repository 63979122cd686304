package yardlight.db.turn;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import yardlight.db.disk.Vendor;

/**
 * Says whose turn it is, among gateways on one database, to do what only one should. Whoever has a turn keeps it until they
 * leave it, are closed, die, or lose the database: on PostgreSQL it is an advisory lock of a connection that is kept for it. An H2 file
 * has only one gateway.
 */
@Component
public class Turns implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Turns.class);

    private static final int SECONDS = 2;

    private final DataSource source;
    private final boolean alone;
    private final Map<String, Connection> held = new HashMap<>();
    private boolean closed;

    Turns(DataSource source) {
        this.source = source;
        this.alone = Vendor.of(source) == Vendor.H2;
    }

    /** Whether this gateway may do it now. Asks the database each time; nobody may while it does not answer. */
    public synchronized boolean mine(String what) {
        if (alone || closed) {
            return alone && !closed;
        }
        try {
            Connection had = held.get(what);
            if (had != null && had.isValid(SECONDS)) {
                return true;
            }
            letGo(held.remove(what));
            return take(what);
        } catch (SQLException e) {
            LOG.info("whose turn it is at {} is not known now: {}", what, e.getMessage());
            return false;
        }
    }

    /** Leaves it to another gateway, until this one asks for it again. */
    public synchronized void leave(String what) {
        letGo(held.remove(what));
    }

    private boolean take(String what) throws SQLException {
        Connection fresh = source.getConnection();
        boolean taken = false;
        try (PreparedStatement ask =
                fresh.prepareStatement("select pg_try_advisory_lock(hashtext('yardlight'), hashtext(?))")) {
            fresh.setAutoCommit(true);
            ask.setString(1, what);
            try (ResultSet answer = ask.executeQuery()) {
                taken = answer.next() && answer.getBoolean(1);
            }
            if (taken) {
                held.put(what, fresh);
                LOG.info("{} is this gateway's turn", what);
            }
            return taken;
        } finally {
            if (!taken) {
                fresh.close();
            }
        }
    }

    /** A connection goes back to its pool, and would keep its locks there. */
    private static void letGo(Connection connection) {
        if (connection == null) {
            return;
        }
        try (connection;
                PreparedStatement all = connection.prepareStatement("select pg_advisory_unlock_all()")) {
            all.execute();
        } catch (SQLException e) {
            // It is gone, and its locks with it.
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        held.values().forEach(Turns::letGo);
        held.clear();
    }
}
