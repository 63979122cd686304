package yardlight.channels.modem;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The thread that owns the port: nobody else reads or writes it. It does what others ask for, one thing after the other, and
 * in between hears what comes in. When the modem is lost it opens the port again by itself, after a pause that gets longer;
 * whoever asks meanwhile is told at once.
 */
final class Keeper {

    private static final Logger LOG = LoggerFactory.getLogger(Keeper.class);

    private static final Duration FIRST_PAUSE = Duration.ofMillis(250);
    private static final Duration LONGEST_PAUSE = Duration.ofSeconds(15);
    /** A modem that was lost before it was there for as long says nothing for the next time. */
    private static final Duration STEADY = Duration.ofSeconds(10);

    private static final int LISTENING_MS = 50;

    private static final String CLOSED = "the channel is closed";

    private final ModemSettings settings;
    private final SettingUp settingUp;
    private final Storage storage;
    private final LinkedBlockingQueue<Job<?>> asked = new LinkedBlockingQueue<>();
    private final Thread thread;
    private Optional<String> failure = Optional.empty();
    private boolean started;
    private boolean hurried;
    private boolean closed;
    private volatile Standing standing = Standing.UNKNOWN;
    private volatile long ready = System.nanoTime();

    Keeper(ModemSettings settings, Storage storage) {
        this.settings = settings;
        this.settingUp = new SettingUp(settings);
        this.storage = storage;
        this.thread = new Thread(this::keep, "modem");
        thread.setDaemon(true);
    }

    /** Opens the port soon, if that has not begun yet. */
    synchronized void start() {
        if (!started && !closed) {
            started = true;
            thread.start();
        }
    }

    /** Has something done. A {@link Gone} if there is no modem, and nobody waits for one. */
    synchronized void ask(Job<?> job) throws Gone {
        start();
        if (closed || failure.isPresent()) {
            throw new Gone(closed ? CLOSED : failure.get());
        }
        asked.add(job);
    }

    /** Opens the port at once if it is not open, whatever the pause. */
    synchronized void hurry() {
        failure = Optional.empty();
        hurried = true;
        notifyAll();
    }

    /** Why nothing could be sent now, as far as is known; empty if it could. */
    Optional<String> complaint() {
        Standing now = standing;
        synchronized (this) {
            return failure.or(now::complaint);
        }
    }

    Standing standing() {
        return standing;
    }

    /** Since when the modem has been there, or was there last; in the time of {@link System#nanoTime()}. */
    long readySince() {
        return ready;
    }

    /** Asks how the modem stands with its network. By the thread that owns the port only. */
    Standing look(Dialogue dialogue) throws Gone {
        standing = Standing.of(dialogue);
        return standing;
    }

    /** What is under way is finished, what waits is not begun. */
    void close(Duration limit) {
        synchronized (this) {
            closed = true;
            cancel(CLOSED);
            notifyAll();
        }
        try {
            thread.join(limit.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void keep() {
        int failures = 0;
        while (pause(failures)) {
            long since = System.nanoTime();
            boolean there = false;
            String why;
            try (SerialLine port = SerialLine.open(settings.port(), settings.speed())) {
                var dialogue = new Dialogue(port, settings.timeouts().answer());
                settingUp.begin(dialogue);
                setUp(dialogue);
                there = true;
                ready = System.nanoTime();
                LOG.info("the modem at {} is ready", settings.port());
                serve(dialogue);
                return;
            } catch (Gone | NotReady e) {
                why = e.getMessage();
            } catch (RuntimeException | Error e) {
                // Whatever it is: without this thread there is no modem any more.
                why = e.toString();
            }
            boolean steady = there && System.nanoTime() - since > STEADY.toNanos();
            failures = steady ? 0 : failures + 1;
            if (failures < 2 || !failure().equals(Optional.of(why))) {
                LOG.info("the modem at {} cannot be used: {}", settings.port(), why);
            }
            // One that was there is looked for again at once, and who sends waits for it; but not over and over.
            lost(there && failures < 2 ? Optional.empty() : Optional.of(why));
        }
    }

    /** Does what is asked for and hears what comes, until the channel is closed. */
    private void serve(Dialogue dialogue) throws Gone, NotReady {
        long poll = settings.timeouts().poll().toNanos();
        long last = System.nanoTime();
        while (!isClosed()) {
            Job<?> job = next();
            if (job != null) {
                job.run(dialogue);
                dialogue.requireWhole();
            }
            storage.hear(dialogue.unasked());
            if (storage.isDue()) {
                storage.look(dialogue);
            }
            if (System.nanoTime() - last > poll) {
                setUp(dialogue);
                last = System.nanoTime();
            }
        }
    }

    private void setUp(Dialogue dialogue) throws Gone, NotReady {
        storage.keeps(settingUp.setUp(dialogue));
        look(dialogue);
        synchronized (this) {
            failure = Optional.empty();
        }
    }

    private Job<?> next() {
        try {
            return asked.poll(LISTENING_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            // Nobody interrupts this thread; whoever closes the channel says so.
            return null;
        }
    }

    private synchronized void lost(Optional<String> why) {
        standing = Standing.UNKNOWN;
        failure = why;
        why.ifPresent(this::cancel);
    }

    private void cancel(String why) {
        List<Job<?>> all = new ArrayList<>();
        asked.drainTo(all);
        all.forEach(job -> job.cancel(why));
    }

    private synchronized Optional<String> failure() {
        return failure;
    }

    private synchronized boolean isClosed() {
        return closed;
    }

    /** Waits as long as so many failures ask for, or until somebody cannot. Whether to go on. */
    private synchronized boolean pause(int failures) {
        long end = System.nanoTime() + length(failures).toNanos();
        while (!closed && !hurried && System.nanoTime() - end < 0) {
            try {
                TimeUnit.NANOSECONDS.timedWait(this, Math.max(end - System.nanoTime(), 1_000_000));
            } catch (InterruptedException e) {
                // As above.
                break;
            }
        }
        hurried = false;
        return !closed;
    }

    private static Duration length(int failures) {
        if (failures == 0) {
            return Duration.ZERO;
        }
        Duration doubled = FIRST_PAUSE.multipliedBy(1L << Math.min(failures - 1, 10));
        return doubled.compareTo(LONGEST_PAUSE) < 0 ? doubled : LONGEST_PAUSE;
    }
}
