package yardlight.gateway.lane;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.db.journal.JournalTrouble;
import yardlight.db.journal.Stored;

/** The one thread that writes. It stops last, after everybody who could still hand something in. */
final class LaneThread implements SmartLifecycle {

    /** Stops after the loops that feed it, and starts before them. */
    static final int PHASE = 100;

    private static final Logger LOG = LoggerFactory.getLogger(LaneThread.class);
    private static final int MOST = 500;
    private static final int MOST_EVENTS = 5_000;
    private static final long LOOK_MILLIS = 1_000;

    private final JournalLane lane;
    private final Batch batch;
    private final LaneMeters meters;
    private final List<Aftermath> aftermaths;
    private volatile boolean running;
    private boolean troubled;
    private Thread thread;

    LaneThread(JournalLane lane, Batch batch, LaneMeters meters, List<Aftermath> aftermaths) {
        this.lane = lane;
        this.batch = batch;
        this.meters = meters;
        this.aftermaths = List.copyOf(aftermaths);
    }

    @Override
    public void start() {
        batch.look();
        running = true;
        lane.open();
        thread = new Thread(this::run, "lane");
        thread.start();
    }

    @Override
    public void stop() {
        running = false;
        lane.shut();
        try {
            thread.join();
            lane.giveUpTheRest();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    private void run() {
        while (running || !lane.queue().isEmpty()) {
            try {
                List<Handed<?>> next = lane.next(MOST, MOST_EVENTS, running ? LOOK_MILLIS : 0);
                if (next.isEmpty()) {
                    look();
                } else {
                    store(next);
                }
            } catch (InterruptedException e) {
                running = false;
            }
        }
    }

    private void look() {
        try {
            batch.look();
            well();
        } catch (RuntimeException e) {
            troubled(e);
        }
    }

    private void store(List<Handed<?>> works) {
        try {
            Stored stored = meters.write(works.size(), () -> batch.run(works));
            well();
            works.forEach(Handed::answer);
            aftermaths.forEach(aftermath -> aftermath.stored(stored));
        } catch (JournalTrouble trouble) {
            if (trouble.data() && works.size() > 1) {
                LOG.warn("a batch of {} cannot be stored, trying one by one: {}", works.size(), trouble.getMessage());
                works.forEach(work -> store(List.of(work)));
            } else {
                fail(works, trouble);
            }
        } catch (RuntimeException | Error mistake) {
            LOG.error("a batch of {} failed", works.size(), mistake);
            works.forEach(work -> work.giveUp(new IllegalStateException("the batch failed", mistake)));
        }
    }

    private void fail(List<Handed<?>> works, JournalTrouble trouble) {
        meters.failed();
        if (trouble.data()) {
            LOG.error("cannot be stored: {}", works.get(0).about(), trouble);
            works.get(0).giveUp(trouble);
        } else {
            troubled(trouble);
            works.forEach(work -> work.giveUp(new LaneBusy("the database does not answer", trouble)));
        }
    }

    private void troubled(RuntimeException trouble) {
        if (!troubled) {
            LOG.error("the database does not answer; nothing is taken until it does", trouble);
        }
        troubled = true;
    }

    private void well() {
        if (troubled) {
            LOG.info("the database answers again");
        }
        troubled = false;
    }
}
