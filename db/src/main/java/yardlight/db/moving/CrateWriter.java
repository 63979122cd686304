package yardlight.db.moving;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a crate, a row at a time. Its file is there for its owner alone, where the file system knows owners. */
final class CrateWriter implements AutoCloseable {

    private static final int BUFFER = 1 << 16;

    private final ZipOutputStream zip;

    CrateWriter(Path file) throws IOException {
        OutputStream out = Channels.newOutputStream(Files.newByteChannel(
                file, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), onlyMine(file)));
        zip = new ZipOutputStream(new BufferedOutputStream(out, BUFFER), StandardCharsets.UTF_8);
        zip.setLevel(Deflater.BEST_SPEED);
    }

    private static FileAttribute<?>[] onlyMine(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    Crate.Part write(MovedTable table, ResultSet rows) throws IOException, SQLException {
        zip.putNextEntry(new ZipEntry(Crate.Part.entry(table.name())));
        MessageDigest sum = Hash.fresh();
        long count = 0;
        // Nothing that the encoder would have to leave out comes here: see Escaped.
        Writer text = new BufferedWriter(
                new OutputStreamWriter(new DigestOutputStream(zip, sum), StandardCharsets.UTF_8), BUFFER);
        text.append(table.header()).append('\n');
        var line = new StringBuilder();
        while (rows.next()) {
            line.setLength(0);
            table.write(rows, line);
            text.append(line).append('\n');
            count++;
        }
        text.flush();
        zip.closeEntry();
        return new Crate.Part(table.name(), count, Hash.of(sum));
    }

    void finish(Crate crate) throws IOException {
        zip.putNextEntry(new ZipEntry(Crate.ENTRY));
        zip.write(crate.text().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
