package yardlight.db.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import yardlight.db.disk.Forced;
import yardlight.db.disk.H2File;

/**
 * The folder of an H2 file and what lies beside it while a backup is put in place.
 *
 * @param folder where the file is
 * @param name of the database, without an ending
 */
record Place(Path folder, String name) {

    static Place of(Path database) {
        return new Place(
                database.toAbsolutePath().getParent(), database.getFileName().toString());
    }

    Path file() {
        return folder.resolve(name + H2File.ENDING);
    }

    /** Where a backup is unpacked and looked at. */
    Path work() {
        return folder.resolve("restoring");
    }

    /** What {@link #work} is called once all of it is on disk. */
    Path done() {
        return folder.resolve("restored");
    }

    Path copy(Path in) {
        return in.resolve(name + H2File.ENDING);
    }

    /** A name that no file has, for the database that is there now. */
    String freeAside() {
        int number = 1;
        while (Files.exists(folder.resolve(aside(number)))) {
            number++;
        }
        return aside(number);
    }

    private String aside(int number) {
        return name + ".aside-" + number + H2File.ENDING;
    }

    /** Moves the old database aside and the new one in. May be begun again wherever it was broken off. */
    void moveIn(Restored restored) throws IOException {
        Path copy = copy(done());
        if (Files.exists(copy)) {
            Path aside = folder.resolve(restored.aside());
            if (Files.exists(file()) && !Files.exists(aside)) {
                Files.move(file(), aside);
            }
            Files.move(copy, file(), StandardCopyOption.ATOMIC_MOVE);
            Forced.sync(folder);
        }
    }

    /** H2 holds such a lock as long as it has the file open. */
    boolean open() throws IOException {
        if (!Files.exists(file())) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(file(), StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException e) {
            return true;
        }
    }
}
