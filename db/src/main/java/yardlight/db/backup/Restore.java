package yardlight.db.backup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.springframework.util.FileSystemUtils;
import yardlight.db.disk.Forced;

/**
 * Puts a backup in place of an H2 database that nobody has open. The backup is unpacked, opened and synced beside it
 * first; then the database is moved aside, and the backup in. Nothing is overwritten, and a start after a crash in between
 * ends what was begun.
 */
public final class Restore {

    private final Place place;
    private final BackupFile.Login login;

    /**
     * @param database its path, as the address of the database has it
     */
    public Restore(Path database, String user, String password) {
        this.place = Place.of(database);
        this.login = new BackupFile.Login(user, password);
    }

    /** Ends what a crash broke off; comes back with the restore that the database stems from, if it stems from one. */
    public Optional<Restored> finish() {
        Optional<Restored> restored = Restored.in(place.done());
        restored.ifPresent(this::moveIn);
        return restored;
    }

    /**
     * @return empty when the database stems from just this backup already
     * @throws RestoreRefused when the backup is damaged, or not ours, or of a newer release, or somebody has the database
     *     open; everything is as it was then
     */
    public Optional<Restored> from(Path backup) {
        try {
            String digest = digest(backup);
            boolean again = Restored.in(place.done())
                    .filter(before -> before.digest().equals(digest))
                    .isPresent();
            return again && Files.exists(place.file()) ? Optional.empty() : Optional.of(replace(backup, digest));
        } catch (IOException e) {
            throw new RestoreRefused("the backup " + backup + " cannot be put in place: " + e, e);
        }
    }

    private Restored replace(Path backup, String digest) throws IOException {
        if (place.open()) {
            throw new RestoreRefused("another program has the database open, most likely a gateway", null);
        }
        FileSystemUtils.deleteRecursively(place.work());
        Files.createDirectories(place.work());
        try {
            new BackupFile(backup, login).unpack(place.copy(place.work()));
        } catch (RestoreRefused | IOException e) {
            FileSystemUtils.deleteRecursively(place.work());
            throw e;
        }
        var restored = new Restored(place.work(), backup.getFileName().toString(), digest, place.freeAside());
        restored.write();
        Forced.sync(place.copy(place.work()));
        FileSystemUtils.deleteRecursively(place.done());
        Files.move(place.work(), place.done(), StandardCopyOption.ATOMIC_MOVE);
        Restored done = restored.movedTo(place.done());
        place.moveIn(done);
        return done;
    }

    private void moveIn(Restored restored) {
        try {
            place.moveIn(restored);
        } catch (IOException e) {
            throw new RestoreRefused("what was begun cannot be ended: " + e, e);
        }
    }

    private static String digest(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sum = MessageDigest.getInstance("SHA-256");
            byte[] block = new byte[1 << 16];
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                sum.update(block, 0, read);
            }
            return HexFormat.of().formatHex(sum.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
