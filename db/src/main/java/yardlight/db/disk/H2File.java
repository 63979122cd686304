package yardlight.db.disk;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The file of an H2 database.
 *
 * @param database its path as an address has it, without the ending
 */
public record H2File(Path database) {

    public static final String ENDING = ".mv.db";

    private static final String ADDRESS = "jdbc:h2:file:";

    /** The file behind an address of JDBC; empty when there is none, as on PostgreSQL. */
    public static Optional<H2File> of(String url) {
        return url.startsWith(ADDRESS)
                ? Optional.of(new H2File(Path.of(url.substring(ADDRESS.length()).split(";", 2)[0])))
                : Optional.empty();
    }

    /** The same file by another address. */
    public String address(String settings) {
        return ADDRESS + database + settings;
    }

    public Path path() {
        return Path.of(database + ENDING).toAbsolutePath();
    }
}
