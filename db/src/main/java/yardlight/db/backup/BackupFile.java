package yardlight.db.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import yardlight.db.disk.H2File;

/**
 * A backup as {@link Backups} writes it: a zip with one H2 file in it.
 *
 * @param login of whoever owns the database in it
 */
record BackupFile(Path file, Login login) {

    /** A user of the database. */
    record Login(String user, String password) {}

    /** Unpacks it, holds it against its checksum, opens it, and looks whether this release can go on with it. */
    void unpack(Path into) throws IOException {
        try (var in = new ZipInputStream(Files.newInputStream(file))) {
            ZipEntry entry = in.getNextEntry();
            if (entry == null || !entry.getName().endsWith(H2File.ENDING)) {
                throw new RestoreRefused(file + " is no backup of Yardlight, or is damaged", null);
            }
            Files.copy(in, into);
        } catch (IOException e) {
            throw new RestoreRefused("the backup " + file + " is damaged: " + e.getMessage(), e);
        }
        String path = into.toString();
        check(new H2File(Path.of(path.substring(0, path.length() - H2File.ENDING.length()))));
    }

    private void check(H2File database) {
        try {
            Flyway tables = Flyway.configure()
                    .dataSource(database.address(";IFEXISTS=TRUE"), login.user(), login.password())
                    .locations("classpath:db/migration/common", "classpath:db/migration/h2")
                    .ignoreMigrationPatterns("*:pending")
                    .load();
            tables.validate();
            if (tables.info().current() == null) {
                throw new RestoreRefused(file + " holds a database, but not one of Yardlight", null);
            }
        } catch (FlywayException e) {
            throw new RestoreRefused(
                    "the backup " + file + " is damaged, or a newer release made it: " + e.getMessage(), e);
        }
    }
}
