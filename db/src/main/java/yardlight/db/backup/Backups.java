package yardlight.db.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import yardlight.db.disk.Vendor;

/**
 * Backs H2 up while it is in use, with its own {@code BACKUP TO}. PostgreSQL has tools of its own for that and is left
 * alone.
 */
@Component
public class Backups {

    private static final Pattern NAME = Pattern.compile("yardlight-\\d{4}-\\d{2}-\\d{2}\\.zip");

    private final Vendor vendor;
    private final JdbcTemplate jdbc;

    Backups(DataSource source) {
        this.vendor = Vendor.of(source);
        this.jdbc = new JdbcTemplate(source);
    }

    /**
     * Writes one backup for the day and removes the oldest ones. A backup that did not come to its end never has the
     * name of one that did.
     *
     * @param keep how many are kept, at least 1
     * @return the file, or empty on PostgreSQL
     */
    public Optional<Path> back(Path folder, LocalDate day, int keep) {
        if (keep < 1) {
            throw new IllegalArgumentException("backups to keep must be at least 1: " + keep);
        }
        if (vendor != Vendor.H2) {
            return Optional.empty();
        }
        try {
            Files.createDirectories(folder);
            Path half = folder.resolve("yardlight-" + day + ".half");
            Path whole = folder.resolve("yardlight-" + day + ".zip");
            jdbc.execute("backup to '" + half.toString().replace("'", "''") + "'");
            Files.move(half, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            prune(folder, keep);
            return Optional.of(whole);
        } catch (IOException e) {
            throw new UncheckedIOException("the backup in " + folder + " failed", e);
        }
    }

    private static void prune(Path folder, int keep) throws IOException {
        List<Path> newestFirst;
        try (Stream<Path> files = Files.list(folder)) {
            newestFirst = files.filter(
                            file -> NAME.matcher(file.getFileName().toString()).matches())
                    .sorted(Comparator.comparing(Path::getFileName).reversed())
                    .toList();
        }
        for (Path old : newestFirst.subList(Math.min(keep, newestFirst.size()), newestFirst.size())) {
            Files.delete(old);
        }
    }
}
