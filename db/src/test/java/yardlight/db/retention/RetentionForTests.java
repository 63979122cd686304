package yardlight.db.retention;

import java.time.Instant;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;

/** Lets tests of other features have old rows deleted as the gateway does. */
public final class RetentionForTests {

    private RetentionForTests() {}

    /** Deletes what is too old by the usual ages. */
    public static void sweep(DataSource source, Instant now) {
        new Retention(new JdbcTemplate(source)).sweep(Ages.USUAL, now);
    }
}
