package yardlight.db.moving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import yardlight.db.disk.Forced;
import yardlight.db.disk.Vendor;
import yardlight.db.evidence.HeadKey;
import yardlight.db.evidence.LogHead;
import yardlight.db.evidence.SignedHead;

/**
 * Writes all that a gateway keeps into a crate, while no gateway runs. It is written beside its name and gets it when it is
 * whole and on disk. The database stays as it is.
 */
public final class MoveOut {

    private static final String HALF = ".half";
    private static final String KEY = "select content from secret where name = ?";

    /** Waits until the disk has it. */
    interface Sync {
        void force(Path path) throws IOException;
    }

    private final DataSource source;
    private final Sync disk;

    /** @param source no other connection of which is open: on PostgreSQL it would be taken for another gateway's */
    public MoveOut(DataSource source) {
        this(source, Forced::sync);
    }

    MoveOut(DataSource source, Sync disk) {
        this.source = source;
        this.disk = disk;
    }

    /**
     * Writes it.
     *
     * @param file must not exist; its folder must
     * @throws MoveRefused when another gateway is there, the tables are not those of this release, the log is not whole, or
     *     the file cannot be written; there is no file then
     */
    public Crate to(Path file, Instant now) {
        Path whole = file.toAbsolutePath();
        if (Files.exists(whole)) {
            throw new MoveRefused("there is a file of that name already");
        }
        Path half = whole.resolveSibling(whole.getFileName() + HALF);
        try {
            Files.deleteIfExists(half);
            Crate crate = write(half, now);
            disk.force(half);
            name(half, whole);
            return crate;
        } catch (SQLException e) {
            throw Trouble.refused(e);
        } catch (IOException e) {
            throw new MoveRefused("the file cannot be written: " + e, e);
        } finally {
            drop(half);
        }
    }

    /** Whoever is told that there is no file must not find one, with all keys in it. */
    private void name(Path half, Path whole) throws IOException {
        Files.move(half, whole, StandardCopyOption.ATOMIC_MOVE);
        try {
            disk.force(whole.getParent());
        } catch (IOException e) {
            drop(whole);
            throw e;
        }
    }

    private Crate write(Path half, Instant now) throws SQLException, IOException {
        look();
        Crate crate;
        try (LongTransaction transaction = LongTransaction.begin(source);
                var writer = new CrateWriter(half)) {
            crate = write(writer, transaction, now);
        }
        look();
        return crate;
    }

    /** Before and after it: who has come in between may have called somebody, and what was written would not know. */
    private void look() throws SQLException {
        Vendor vendor = Vendor.of(source);
        try (Connection connection = source.getConnection()) {
            Neighbours.refuse(connection, vendor);
            var content = new Content(connection);
            if (content.filled().isEmpty()) {
                throw new MoveRefused("there is nothing in this database: is it the right one?");
            }
            Set<Integer> known = SchemaVersion.known(vendor);
            Set<Integer> applied = SchemaVersion.applied(connection);
            if (!applied.equals(known)) {
                throw new MoveRefused(
                        "the tables are not those of this release, which has to be started on them once: of " + known
                                + " they have " + applied);
            }
        }
    }

    private static Crate write(CrateWriter writer, LongTransaction transaction, Instant now)
            throws SQLException, IOException {
        Connection connection = transaction.connection();
        LogHead head = new StoredLog(connection).head();
        SignedHead signed = SignedHead.of(head, key(connection));
        var parts = new ArrayList<Crate.Part>();
        for (String name : Tables.MOVING) {
            MovedTable table = MovedTable.of(connection, name);
            try (Statement statement = connection.createStatement()) {
                statement.setFetchSize(table.atOnce());
                try (ResultSet rows = statement.executeQuery(table.select())) {
                    parts.add(writer.write(table, rows));
                }
            }
        }
        var crate = new Crate(SchemaVersion.newestCommon(), now, transaction.vendor(), signed, parts);
        writer.finish(crate);
        return crate;
    }

    /** The key that signs heads, as the gateways of this database keep it. */
    static HeadKey key(Connection connection) throws SQLException {
        return found(connection)
                .orElseThrow(() -> new MoveRefused(
                        "there is no key that signs heads of the log; a gateway makes it when it starts"));
    }

    /** The same, where it may be that no gateway was started yet. */
    static Optional<HeadKey> found(Connection connection) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(KEY)) {
            statement.setString(1, HeadKey.NAME);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next()
                        ? Optional.of(HeadKey.of(Base64.getDecoder().decode(rows.getString(1))))
                        : Optional.empty();
            }
        } catch (IllegalArgumentException e) {
            throw new MoveRefused("the key that signs heads of the log cannot be read", e);
        }
    }

    private static void drop(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // A half is no crate by its name, and the next try removes it; of a whole one the next try says that it is
            // there.
        }
    }
}
