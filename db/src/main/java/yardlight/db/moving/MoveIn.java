package yardlight.db.moving;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import javax.sql.DataSource;
import yardlight.db.evidence.HeadKey;
import yardlight.db.evidence.LogHead;
import yardlight.db.evidence.SignedHead;
import yardlight.escalation.Entry;

/**
 * Puts a crate into a database that has nothing in it yet, all of it or nothing: in one transaction, which ends only when the
 * tree of the log, computed anew from what was stored, is the one whose head was signed. Broken off at any moment, the
 * database has nothing in it still, and it can be begun again.
 */
public final class MoveIn {

    /** What is to be done about it. */
    public enum Finding {
        /** Nothing is in the database. */
        TO_BE_DONE,
        /** The database stems from it already. */
        DONE,
        /** The file is gone, and there is something in the database. */
        GONE,
        /** The file cannot be read as a crate, and there is something in the database. */
        UNREADABLE
    }

    private final DataSource source;
    private final Path file;

    public MoveIn(DataSource source, Path file) {
        this.source = source;
        this.file = file;
    }

    /**
     * Looks at both and changes neither; the database need not have its tables yet.
     *
     * @throws MoveRefused when nothing is in the database and the crate is damaged, or of another release; or when the
     *     database has something else in it than what the crate has
     */
    public Finding look() {
        try (Connection connection = source.getConnection()) {
            var content = new Content(connection);
            Optional<String> filled = content.filled();
            if (filled.isPresent()) {
                return beside(content, filled.get());
            }
            if (Files.notExists(file)) {
                throw new MoveRefused("it is not there");
            }
            try (var crate = new CrateFile(file)) {
                crate.check(SchemaVersion.newestCommon());
                return Finding.TO_BE_DONE;
            }
        } catch (SQLException e) {
            throw Trouble.refused(e);
        }
    }

    /** What became of a file that was left behind is no reason for a filled database to stay without a watch. */
    private Finding beside(Content content, String table) throws SQLException {
        if (Files.notExists(file)) {
            return Finding.GONE;
        }
        Crate crate;
        try (var read = new CrateFile(file)) {
            crate = read.crate();
        } catch (MoveRefused e) {
            return Finding.UNREADABLE;
        }
        if (content.hasTables() && content.stemsFrom(crate.head())) {
            return Finding.DONE;
        }
        throw new MoveRefused("there is something in the database already, if only of one start, in " + table
                + "; a new one is needed");
    }

    /**
     * Puts it in; the tables are there and empty. On disk when it returns.
     *
     * @param now for the line of the log that says so
     * @return that line
     * @throws MoveRefused when it is not whole, or somebody wrote meanwhile; the database has nothing in it then
     * @throws MoveInDoubt when it may be in, and may not be on disk
     */
    public Entry in(Instant now) {
        try (var crate = new CrateFile(file);
                LongTransaction transaction = LongTransaction.begin(source)) {
            Connection connection = transaction.connection();
            Optional<String> filled = new Content(connection).filled();
            if (filled.isPresent()) {
                throw new MoveRefused("another gateway wrote to the database meanwhile, into " + filled.get());
            }
            var fitted = new Fitted(transaction.vendor());
            for (Crate.Part part : crate.crate().parts()) {
                Filling.fill(connection, crate, part, fitted);
            }
            var log = new StoredLog(connection);
            LogHead head = log.head();
            refuseAnother(crate.crate().head(), head, MoveOut.key(connection));
            Entry line = new Arrival(connection)
                    .write(file.getFileName().toString(), crate.crate(), fitted, head, log.edge(), now);
            commit(transaction);
            return line;
        } catch (SQLException e) {
            throw Trouble.refused(e);
        }
    }

    private static void commit(LongTransaction transaction) {
        try {
            transaction.commit();
        } catch (SQLException e) {
            throw new MoveInDoubt("the database failed at the end: " + e.getMessage(), e);
        }
    }

    private static void refuseAnother(SignedHead signed, LogHead head, HeadKey key) {
        HexFormat hex = HexFormat.of();
        SignedHead computed = SignedHead.of(head, key);
        if (!signed.publicKey().equals(computed.publicKey())) {
            throw new MoveRefused("its head is not signed by the key that is in it");
        }
        if (!signed.root().equals(computed.root())
                || signed.size() != computed.size()
                || signed.first() != computed.first()
                || !signed.at().equals(computed.at())) {
            throw new MoveRefused("the log in it is not the one whose head was signed: " + computed.size()
                    + " lines with the root " + computed.root() + ", and the head stands for " + signed.size()
                    + " with the root " + signed.root());
        }
        if (!key.signed(head, hex.parseHex(signed.signature()))) {
            throw new MoveRefused("the signature of its head is not valid");
        }
    }
}
