package yardlight.db.journal;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.columns.LogColumns;
import yardlight.db.disk.Vendor;
import yardlight.escalation.Decision;
import yardlight.escalation.Entry;
import yardlight.escalation.Escalator;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Outcome;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/** New alarms as the lane writes them, each with its callout and its text, in batches of a full lane. */
final class AlarmBatches implements AutoCloseable {

    static final int SIZE = 32;

    /** Eight alarms at a site are no flood yet. */
    private static final int A_SITE = 8;

    private final Setup setup;
    private final Connection connection;
    private final JdbcTemplate jdbc;
    private final Pen pen;
    private final Memory memory = new Memory();
    private final boolean leaves;
    private final List<LogColumns.Line> bare = new ArrayList<>();
    private Instant now = Fixtures.at("2026-11-25T01:00");
    private int events;
    private long line;

    /** @param batches how many there will be at most */
    AlarmBatches(DataSource source, boolean leaves, int batches) {
        this.setup = setup(batches * SIZE / A_SITE);
        this.leaves = leaves;
        this.jdbc = new JdbcTemplate(source);
        try {
            Vendor vendor = Vendor.of(source);
            connection = source.getConnection();
            try (Statement statement = connection.createStatement()) {
                for (String setting : vendor.writerStatements()) {
                    statement.execute(setting);
                }
            }
            connection.setAutoCommit(false);
            pen = new Pen(connection, vendor.syncStatement());
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Each site has a person of its own, so that nobody gets a hundred of them in one text. */
    private static Setup setup(int sites) {
        List<Site> places = list(sites, i -> new Site("site-" + i, "Site " + i, Fixtures.CHICAGO, "ladder-" + i));
        List<Contact> people = list(sites, AlarmBatches::hand);
        List<Ladder> ladders = list(
                sites,
                i -> new Ladder(
                        "ladder-" + i,
                        Ladder.EndsWhen.ACKNOWLEDGED,
                        List.of(new Rung(List.of("hand-" + i), Duration.ofMinutes(15), 2)),
                        0));
        return new Setup(places, List.of(Fixtures.aBox()), List.of(), people, List.of(), ladders);
    }

    private static Contact hand(int i) {
        Contact ben = Fixtures.ben();
        return new Contact(
                "hand-" + i, "Hand " + i, ben.zone(), ben.language(), ben.lines(), ben.quiet(), ben.textsPerHour());
    }

    private static <T> List<T> list(int size, IntFunction<T> one) {
        return IntStream.range(0, size).mapToObj(one).toList();
    }

    int events() {
        return events;
    }

    long lines() {
        return jdbc.queryForObject("select count(*) from log_line", Long.class);
    }

    /** How many lines have their hash. */
    long leaves() {
        return jdbc.queryForObject("select count(*) from log_line where leaf is not null", Long.class);
    }

    /** One batch, from its first query to the moment in which it survives; comes back with the nanoseconds. */
    long write() {
        now = now.plusMillis(20);
        long began = System.nanoTime();
        try (var writing = new Writing(pen, memory, () -> {})) {
            var stimuli = new ArrayList<Stimulus.Reported>();
            for (int i = 0; i < SIZE; i++) {
                stimuli.add(reported());
            }
            var wants = new Wants(setup, now);
            stimuli.forEach(wants::add);
            Sheet sheet = writing.sheet(setup);
            sheet.prepare(wants);
            var escalator = new Escalator(Links.NONE, sheet::nextCode);
            for (Stimulus.Reported stimulus : stimuli) {
                Decision decision = escalator.decide(sheet, stimulus, now);
                sheet.apply(decision.changes());
                log(writing, decision.entries());
                writing.event(posted(stimulus.reports().get(0)));
            }
            pen.insert(LogColumns.TABLE, bare);
            bare.clear();
            writing.commit(sheet, now);
        }
        return System.nanoTime() - began;
    }

    private void log(Writing writing, List<Entry> entries) {
        if (leaves) {
            writing.log(now, entries);
        } else {
            entries.forEach(entry -> bare.add(new LogColumns.Line(++line, now, entry, null)));
        }
    }

    private Stimulus.Reported reported() {
        int n = events++;
        var key = new AlarmKey("site-" + n / A_SITE, "tank-" + n, "high-high");
        return new Stimulus.Reported("mesa-9-box", List.of(Fixtures.active(key, now)));
    }

    private PostedRecord posted(Report report) {
        return new PostedRecord(
                "mesa-9-box", Optional.of("e-" + events), report, now, Outcome.OCCURRED, Optional.empty());
    }

    @Override
    public void close() {
        try {
            pen.rollback();
            connection.close();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
