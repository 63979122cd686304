package yardlight.db.evidence;

import java.io.IOException;
import java.io.StringWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.journal.Journal;
import yardlight.db.journal.Writing;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;

/** A log that was written by the journal, as the gateway does. */
final class WrittenLog implements AutoCloseable {

    static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    static final HeadKey KEY = HeadKey.of(HeadKey.fresh());
    private static final String[] WORDS = {
        "occurred",
        "handed over; by mail",
        "Ana said \"ok 47\"",
        "línea con ñ y €",
        "\ud83d\ude02 at night",
        "a\\b\n\u0085c",
        ""
    };

    final DataSource source;
    final JdbcTemplate jdbc;
    final LogTree tree;
    private final Journal journal;
    private int written;

    WrittenLog(TestDatabase database) {
        this(database.newDataSource());
    }

    private WrittenLog(DataSource source) {
        this.source = source;
        this.jdbc = new JdbcTemplate(source);
        this.tree = new LogTree(jdbc);
        this.journal = new Journal(source);
    }

    /** So many lines more, in transactions of up to so many. */
    WrittenLog with(int lines, int atOnce) {
        for (int left = lines; left > 0; left -= atOnce) {
            try (Writing writing = journal.begin()) {
                Instant now = NOW.plusMillis(written);
                var sheet = writing.sheet(Setup.EMPTY);
                var entries = new ArrayList<Entry>();
                for (int i = 0; i < Math.min(left, atOnce); i++) {
                    entries.add(new Entry(
                            Entry.What.NOTICE,
                            Map.of("site", "mesa-" + written % 7, "notice", "n-" + written),
                            WORDS[written++ % WORDS.length]));
                }
                writing.log(now, entries);
                writing.commit(sheet, now);
            }
        }
        return this;
    }

    SignedHead head() {
        return SignedHead.of(tree.head(), KEY);
    }

    List<String> export() throws IOException {
        LogHead head = tree.head();
        var text = new StringWriter();
        new LogExport(jdbc).write(head, SignedHead.of(head, KEY), text);
        return List.of(text.toString().split("\n", -1));
    }

    @Override
    public void close() {
        journal.close();
    }
}
