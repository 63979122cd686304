package yardlight.db.disk;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.MVStore;

/**
 * Keeps the file of an H2 database from growing with every commit. Each commit writes a chunk, and a chunk takes its room,
 * on disk and in memory, until the last row in it has been written anew. H2 packs what is left of old chunks from its
 * background thread, and has none with {@code WRITE_DELAY=0}: so that is done here.
 */
public final class Packing {

    /** Per cent of what lies in the chunks that is still wanted. Packing closer writes each row more often. */
    static final int WANTED = 30;

    /** Bytes moved at a time, so that no commit has to wait for long. */
    private static final int STEP = 1024 * 1024;

    private final DataSource source;

    public Packing(DataSource source) {
        this.source = source;
    }

    /**
     * Packs a little, if there is enough to gain. Never touches what was written in the last 45 seconds: H2 keeps that for
     * the sake of a disk that is late.
     *
     * @return whether it did, so that there may be more
     */
    public boolean step() throws SQLException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            boolean packed = fill(connection) < WANTED && store(connection).compact(WANTED, STEP);
            if (packed) {
                // What was moved has to be on disk at its new place before its old one is written over.
                statement.execute("checkpoint sync");
            }
            return packed;
        }
    }

    static int fill(Connection connection) throws SQLException {
        return store(connection).getFileStore().getChunksFillRate();
    }

    private static MVStore store(Connection connection) throws SQLException {
        var session = (SessionLocal) connection.unwrap(JdbcConnection.class).getSession();
        return session.getDatabase().getStore().getMvStore();
    }
}
