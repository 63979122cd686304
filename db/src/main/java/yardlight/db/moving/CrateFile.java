package yardlight.db.moving;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A crate to be read, a row at a time. */
final class CrateFile implements AutoCloseable {

    private static final int BUFFER = 1 << 16;

    /** A line for each table is a few thousand characters. */
    private static final int LONGEST_LIST = 1_000_000;

    /** Takes the lines of a part. */
    interface Lines {

        /** The first one. */
        void header(String line);

        /** @param number of the row, from 1 on */
        void row(long number, String line) throws SQLException;
    }

    /** Only what is true of any part is looked at. */
    private static final Lines UNREAD = new Lines() {
        @Override
        public void header(String line) {}

        @Override
        public void row(long number, String line) {}
    };

    private final ZipFile zip;
    private final Crate crate;

    /** @throws MoveRefused when it is no crate, or what it says of itself was changed */
    CrateFile(Path file) {
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new MoveRefused("it cannot be read, or is damaged: " + e.getMessage(), e);
        }
        try {
            crate = Crate.read(list());
        } catch (MoveRefused e) {
            close();
            throw e;
        }
    }

    private String list() {
        ZipEntry entry = zip.getEntry(Crate.ENTRY);
        if (entry == null) {
            throw new MoveRefused("it is no crate of Yardlight, or is damaged");
        }
        try (InputStream in = zip.getInputStream(entry)) {
            return new String(in.readNBytes(LONGEST_LIST), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw damaged(Crate.ENTRY, e);
        }
    }

    Crate crate() {
        return crate;
    }

    /**
     * Holds it against what this release moves, and each part against its count and its hash.
     *
     * @throws MoveRefused when it does not fit
     */
    void check(int schema) {
        if (crate.schema() != schema) {
            String release = crate.schema() > schema ? "a newer release" : "an older release";
            throw new MoveRefused(release + " made it: its tables are of version " + crate.schema()
                    + ", those of this release of " + schema);
        }
        List<String> tables = crate.parts().stream().map(Crate.Part::table).toList();
        if (!tables.equals(Tables.MOVING)) {
            throw new MoveRefused("its tables are not those of this release");
        }
        try {
            for (Crate.Part part : crate.parts()) {
                read(part, UNREAD);
            }
        } catch (SQLException e) {
            throw new IllegalStateException("no database was asked", e);
        }
    }

    /** Reads a part to its end; when it comes back, every line of it was as it was written. */
    void read(Crate.Part part, Lines lines) throws SQLException {
        ZipEntry entry = zip.getEntry(part.entry());
        if (entry == null) {
            throw damaged(part.table(), "it is not there");
        }
        MessageDigest sum = Hash.fresh();
        long rows = 0;
        try (var text = new BufferedReader(
                new InputStreamReader(
                        new DigestInputStream(zip.getInputStream(entry), sum), StandardCharsets.UTF_8.newDecoder()),
                BUFFER)) {
            String line = text.readLine();
            lines.header(String.valueOf(line));
            for (line = text.readLine(); line != null; line = text.readLine()) {
                lines.row(++rows, line);
            }
        } catch (IOException e) {
            throw damaged(part.table(), e);
        }
        if (rows != part.rows()) {
            throw damaged(part.table(), "it has " + rows + " rows and should have " + part.rows());
        }
        if (!Hash.of(sum).equals(part.sha256())) {
            throw damaged(part.table(), "it was changed");
        }
    }

    private static MoveRefused damaged(String part, Object why) {
        return new MoveRefused("it is damaged: " + part + ": " + why);
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            // It was only read: that it cannot be closed is no news.
        }
    }
}
