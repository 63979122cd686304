package yardlight.db.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import yardlight.db.disk.Forced;

/**
 * A backup that was put in place of the database. It lies beside the database until the next restore, so that the same
 * backup is not put in place twice and the log is told.
 *
 * @param folder where this is written down
 * @param backup name of the backup's file
 * @param digest SHA-256 of it
 * @param aside name of the file that the database before it has now, or would have if there was one
 */
public record Restored(Path folder, String backup, String digest, String aside) {

    private static final String NOTE = "restored.txt";
    private static final String SAID = "said.txt";

    static Optional<Restored> in(Path folder) {
        Path note = folder.resolve(NOTE);
        if (!Files.exists(note)) {
            return Optional.empty();
        }
        try {
            List<String> lines = Files.readAllLines(note);
            return Optional.of(new Restored(folder, lines.get(0), lines.get(1), lines.get(2)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write() throws IOException {
        Files.write(folder.resolve(NOTE), List.of(backup, digest, aside));
        Forced.sync(folder.resolve(NOTE));
    }

    Restored movedTo(Path elsewhere) {
        return new Restored(elsewhere, backup, digest, aside);
    }

    /** Whether there was a database that was put aside. */
    public boolean putAside() {
        return Files.exists(folder.resolveSibling(aside));
    }

    /** Whether the log was told. */
    public boolean said() {
        return Files.exists(folder.resolve(SAID));
    }

    /** The log was told. */
    public void say() {
        try {
            Files.writeString(folder.resolve(SAID), "The log has a line about this.\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
