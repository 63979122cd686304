package yardlight.db.moving;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import yardlight.db.disk.Vendor;

/** The versions of the tables: which this release knows, and which a database has. */
public final class SchemaVersion {

    private static final Pattern NAME = Pattern.compile("V(\\d+)__.*");
    private static final String APPLIED = "select cast(\"version\" as integer) from \"flyway_schema_history\""
            + " where \"success\" and \"version\" is not null";

    private SchemaVersion() {}

    /** The newest on any database. */
    public static int newestKnown() {
        return known("*").last();
    }

    /** The newest that both databases have, by which a crate goes. */
    static int newestCommon() {
        return known("common").last();
    }

    /** All that a database of this release has, but for what is not a version. */
    static Set<Integer> known(Vendor vendor) {
        TreeSet<Integer> known = known("common");
        known.addAll(known(vendor.name().toLowerCase(Locale.ROOT)));
        return known;
    }

    static Set<Integer> applied(Connection connection) throws SQLException {
        var applied = new TreeSet<Integer>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(APPLIED)) {
            while (rows.next()) {
                applied.add(rows.getInt(1));
            }
        }
        return applied;
    }

    private static TreeSet<Integer> known(String folder) {
        var known = new TreeSet<Integer>();
        try {
            for (Resource migration : new PathMatchingResourcePatternResolver()
                    .getResources("classpath*:db/migration/" + folder + "/V*.sql")) {
                Matcher version = NAME.matcher(String.valueOf(migration.getFilename()));
                if (version.matches()) {
                    known.add(Integer.parseInt(version.group(1)));
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("the tables that belong to this release cannot be listed", e);
        }
        return known;
    }
}
