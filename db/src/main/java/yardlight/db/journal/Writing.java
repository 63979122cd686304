package yardlight.db.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.columns.Column;
import yardlight.db.columns.Table;
import yardlight.db.due.DueKey;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;

/**
 * One transaction of the writer. Closing it without {@link #commit} leaves everything as it was. Every method throws
 * {@link JournalTrouble} when the database does not do its part; the transaction is lost then.
 */
public final class Writing implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Writing.class);
    private static final String DOCUMENT = "select document from setup_version where version = ?";
    private static final String NEW_DOCUMENT =
            "insert into setup_version (version, document, stored_at, stored_by) values (?, ?, ?, ?)";
    private static final String KNOWN = "select t.box_event, t.alarm from " + Table.WANTED
            + " join event t on t.box_event = wanted.one" + " where t.outcome <> 'duplicate' and t.received_at > ?";

    private static final String OTHER_FEEDS = "delete from calendar_feed where not contact = any(?)";

    private static final Duration MOST_STEP = Duration.ofMinutes(1);

    private record Document(int version, String text, Instant at, String by) {}

    private final Pen pen;
    private final Memory memory;
    private final Runnable drop;
    private final Numbers numbers;
    private final Extras extras = new Extras();
    private final ReadingRows readings;
    private boolean done;

    Writing(Pen pen, Memory memory, Runnable drop) {
        this.pen = pen;
        this.memory = memory;
        this.drop = drop;
        this.numbers = new Numbers(pen);
        this.readings = new ReadingRows(pen);
    }

    /**
     * The time of this transaction: what the clock says, but not before the transaction that wrote last, for a clock may
     * step back and two gateways' clocks differ. A difference of more than a minute is a clock set wrong, then or now, and
     * is not followed.
     */
    public Instant now(Instant clock) {
        return numbers.lastAt()
                .filter(last -> last.isAfter(clock) && last.isBefore(clock.plus(MOST_STEP)))
                .orElse(clock);
    }

    /** The time of the last transaction of any gateway; empty before the first. */
    public Optional<Instant> lastAt() {
        return numbers.lastAt();
    }

    /** The end of the last break in which no gateway could store what boxes say; empty when none is known. */
    public Optional<Instant> heardFrom() {
        return numbers.heardFrom();
    }

    /** Leaves the end of such a break to the gateways that come later. */
    public void heardFrom(Instant end) {
        numbers.heardFrom(end);
    }

    /** The version of the setup that holds; 0 before the first. */
    public int setupVersion() {
        return numbers.version();
    }

    /** The document of the setup that holds; empty before the first. */
    public Optional<String> setupDocument() {
        return pen
                .read(DOCUMENT, (statement, none) -> statement.setInt(1, setupVersion()), row -> row.text("document"))
                .stream()
                .findFirst();
    }

    /** Stores another setup and comes back with its version. */
    public int setupDocument(String document, String by, Instant now) {
        extras.everyAlarm = true;
        var row = new Document(numbers.nextVersion(), document, now, by);
        pen.write(NEW_DOCUMENT, List.of(row), (statement, one) -> {
            statement.setInt(1, one.version());
            statement.setString(2, one.text());
            statement.setObject(3, Column.stored(one.at()));
            statement.setString(4, one.by());
        });
        return row.version();
    }

    /** Whoever is none of these contacts has no private calendar any more, also when somebody of this id comes again. */
    public void feedsOnlyOf(Collection<String> contacts) {
        pen.write(
                OTHER_FEEDS,
                List.of(contacts),
                (statement, ids) ->
                        statement.setArray(1, statement.getConnection().createArrayOf("varchar", ids.toArray())));
    }

    /**
     * Which of these events came before, and the alarm that they belonged to.
     *
     * @param names as {@link PostedRecord#name} makes them
     * @param since events received at or before this instant are forgotten
     */
    public Map<String, Optional<String>> known(Collection<String> names, Instant since) {
        var known = new HashMap<String, Optional<String>>();
        if (!names.isEmpty()) {
            pen.read(
                            KNOWN,
                            (statement, none) -> {
                                statement.setArray(
                                        1, statement.getConnection().createArrayOf("varchar", names.toArray()));
                                statement.setObject(2, Column.stored(since));
                            },
                            row -> Map.entry(row.text("box_event"), row.maybe("alarm")))
                    .forEach(one -> known.put(one.getKey(), one.getValue()));
        }
        return known;
    }

    /** The situation that the decisions of this transaction start from; one for each transaction. */
    public Sheet sheet(Setup setup) {
        return new Sheet(memory.take(numbers.turn(), new Reads(pen), setup), numbers.lastCode());
    }

    public void log(Instant now, List<Entry> entries) {
        entries.forEach(entry -> extras.lines.add(new Extras.Written(numbers.nextLine(), now, entry)));
    }

    public void event(PostedRecord event) {
        extras.events.add(event);
    }

    public ReadingRows readings() {
        return readings;
    }

    public void attempt(AttemptRecord attempt) {
        extras.attempts.add(attempt);
    }

    public void putOff(Retry retry) {
        extras.retries.add(retry);
    }

    /** Its due row has fired: it is written anew from the state as it is at the end, or goes. */
    public void fired(DueKey key) {
        extras.fired.add(key);
    }

    /** Stores everything, commits, and comes back when it survives a power cut. */
    public Stored commit(Sheet sheet, Instant now) {
        new StateStore(pen, sheet).write();
        var notices = new NoticeStore(pen, sheet, now);
        NoticeStore.Result told = notices.write();
        notices.putOff(extras.retries);
        Optional<Instant> due = new DueStore(pen, sheet, extras, now).write();
        new RecordStore(pen, numbers).write(extras);
        readings.write();
        numbers.write(now, sheet.lastCode());
        pen.commit();
        done = true;
        remember(sheet, told);
        return new Stored(told.queued(), due);
    }

    /** It is stored by now: a mistake here must not look as if it were not. Nothing remembered is read anew. */
    private void remember(Sheet sheet, NoticeStore.Result told) {
        try {
            sheet.slice().stored(sheet.changed(), told.written());
            memory.keep(numbers.turn(), sheet.slice());
        } catch (RuntimeException | Error mistake) {
            memory.forget();
            LOG.error("stored, but not remembered; the next transaction reads anew", mistake);
        }
    }

    @Override
    public void close() {
        if (!done && !pen.rollback()) {
            drop.run();
        }
    }
}
