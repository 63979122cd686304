package yardlight.gateway.restore;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;
import yardlight.db.backup.Restored;
import yardlight.db.journal.AttemptRecord;
import yardlight.db.log.LogLine;
import yardlight.db.log.LogLines;
import yardlight.db.outbox.Outbox;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus.Fate;
import yardlight.escalation.Stimulus.NoticeFate;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.LogBook;
import yardlight.gateway.lane.Tried;

/**
 * Tells the log about a backup that was put in place, and takes back the notices that were waiting when it was made: they
 * have most likely gone out since. The calls that they belong to go on, so nobody is forgotten and nobody is texted the
 * same again by the hundred. Runs after the lane and before anything is sent.
 */
@Component
class Restoration implements SmartLifecycle {

    /** After the lane, before the due loop and the dispatcher. */
    private static final int PHASE = 150;

    private static final Logger LOG = LoggerFactory.getLogger(Restoration.class);
    private static final int PAGE = 500;

    /** Notices that were put off wait for less than this. */
    private static final Duration FAR = Duration.ofDays(1);

    private static final String NOT_AGAIN = "a backup was restored: it may have been sent since, and is not sent again";

    /** The log, to read and to write. */
    @Component
    record Log(LogLines lines, LogBook book) {}

    private final Optional<Restored> restored;
    private final Log log;
    private final Outbox outbox;
    private final Intake intake;
    private final InstantSource clock;
    private boolean running;

    Restoration(ObjectProvider<Restored> restored, Log log, Outbox outbox, Intake intake, InstantSource clock) {
        this.restored = Optional.ofNullable(restored.getIfAvailable());
        this.log = log;
        this.outbox = outbox;
        this.intake = intake;
        this.clock = clock;
    }

    @Override
    public void start() {
        running = true;
        restored.filter(done -> !done.said()).ifPresent(this::tell);
    }

    private void tell(Restored done) {
        Entry line = line(done, log.lines().last(), clock.instant());
        LOG.warn(line.words());
        log.book().put(line).join();
        takeBack();
        done.say();
    }

    private static Entry line(Restored done, Optional<LogLine> last, Instant now) {
        String from =
                last.map(line -> "line " + line.line() + " of " + line.at()).orElse("the beginning");
        String aside = done.putAside() ? "; the database before it is in " + done.aside() : "";
        return new Entry(
                Entry.What.RESTORE,
                Map.of("backup", done.backup()),
                "restored from " + done.backup() + ": what was recorded after " + from + " and before " + now
                        + " is missing here" + aside);
    }

    private void takeBack() {
        var left = new ArrayList<Outgoing>();
        List<Outgoing> page = page();
        while (!page.isEmpty()) {
            var stored = new LinkedHashMap<Outgoing, CompletableFuture<Answer>>();
            for (Outgoing outgoing : page) {
                if (outbox.followed(outgoing)) {
                    stored.put(outgoing, intake.put(notAgain(outgoing, clock.instant())));
                } else {
                    left.add(outgoing);
                }
            }
            stored.values().forEach(CompletableFuture::join);
            stored.keySet().forEach(outbox::done);
            page = page();
        }
        left.forEach(outbox::giveBack);
    }

    private List<Outgoing> page() {
        return outbox.claimOthers(List.of(), clock.instant().plus(FAR), PAGE);
    }

    private static Tried notAgain(Outgoing outgoing, Instant now) {
        int line = outgoing.notice().line();
        var attempt =
                new AttemptRecord(outgoing.id(), now, outgoing.channel(), line, "unknown", NOT_AGAIN, Optional.empty());
        var fate = new NoticeFate(outgoing.id(), line, Fate.HANDED_OVER, NOT_AGAIN);
        return new Tried(attempt, Optional.of(fate), Optional.empty(), List.of());
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    @Override
    public int getPhase() {
        return PHASE;
    }
}
