package yardlight.gateway.lane;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import yardlight.db.journal.JournalTrouble;
import yardlight.db.journal.Stored;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;
import yardlight.gateway.clock.Worker;

/** The one thread that writes. It stops last, after everybody who could still hand something in. */
final class LaneThread implements SmartLifecycle, Pulsing {

    /** Stops after the loops that feed it, and starts before them. */
    static final int PHASE = 100;

    private static final Logger LOG = LoggerFactory.getLogger(LaneThread.class);
    private static final int MOST = 500;
    private static final int MOST_EVENTS = 5_000;
    private static final long LOOK_MILLIS = 1_000;

    /** Made while there is memory. Whoever was answered before is not told this. */
    private static final LaneBusy UNFINISHED =
            new LaneBusy("a mistake came between; nobody knows if it was stored", null);

    private final JournalLane lane;
    private final Batch batch;
    private final Hearing hearing;
    private final LaneMeters meters;
    private final List<Aftermath> aftermaths;
    private final Worker worker = new Worker("lane");
    private boolean troubled;

    LaneThread(JournalLane lane, Batch batch, Hearing hearing, LaneMeters meters, List<Aftermath> aftermaths) {
        this.lane = lane;
        this.batch = batch;
        this.hearing = hearing;
        this.meters = meters;
        this.aftermaths = List.copyOf(aftermaths);
    }

    @Override
    public void start() {
        batch.look();
        lane.open();
        worker.start(this::run);
    }

    @Override
    public void stop() {
        if (worker.stop(lane::shut)) {
            lane.giveUpTheRest();
        }
    }

    @Override
    public boolean isRunning() {
        return worker.running();
    }

    @Override
    public int getPhase() {
        return PHASE;
    }

    @Override
    public Pulse pulse() {
        return worker.pulse();
    }

    /** Nothing ends this thread but {@link #stop}: without it nothing is stored any more. */
    private void run() {
        while (worker.running() || !lane.queue().isEmpty()) {
            worker.beat();
            List<Handed<?>> next = List.of();
            try {
                next = lane.next(MOST, MOST_EVENTS, worker.running() ? LOOK_MILLIS : 0);
                if (next.isEmpty()) {
                    look();
                } else {
                    store(next);
                }
            } catch (InterruptedException e) {
                worker.end();
            } catch (Throwable mistake) {
                next.forEach(work -> work.giveUp(UNFINISHED));
                LOG.error("the lane goes on after a mistake; if this is seen again, restart the gateway", mistake);
            }
        }
    }

    private void look() {
        try {
            if (troubled) {
                prove();
            }
            batch.look();
        } catch (Throwable e) {
            troubled(e);
        }
    }

    private void store(List<Handed<?>> works) {
        worker.beat();
        Stored stored;
        try {
            if (troubled) {
                prove();
            }
            stored = meters.write(works.size(), () -> batch.run(works));
        } catch (Throwable trouble) {
            failed(works, trouble);
            return;
        }
        works.forEach(Handed::answer);
        aftermaths.forEach(aftermath -> aftermath.stored(stored));
    }

    /** One bad thing must not take along what happens to be in the same batch; a database that is away hits all alike. */
    private void failed(List<Handed<?>> works, Throwable trouble) {
        if (trouble instanceof JournalTrouble away && !away.data()) {
            troubled(away);
            meters.failed();
            works.forEach(work -> work.giveUp(new LaneBusy("the database does not answer", away)));
        } else if (works.size() > 1) {
            LOG.warn("a batch of {} cannot be stored, trying one by one: {}", works.size(), trouble.toString());
            works.forEach(work -> store(List.of(work)));
        } else {
            meters.failed();
            Handed<?> work = works.get(0);
            work.giveUp(trouble instanceof RuntimeException e ? e : new IllegalStateException("failed", trouble));
            LOG.error("cannot be stored: {}", work.about(), trouble);
        }
    }

    private void troubled(Throwable trouble) {
        if (!troubled) {
            LOG.error("the database does not answer; nothing is taken until it does", trouble);
        }
        troubled = true;
        hearing.lose();
    }

    /** Stores something that says nothing, for a disk that is full can still be read. */
    private void prove() {
        batch.run(List.of(new Handed<>(new ProbeWork())));
        LOG.info("the database answers again");
        troubled = false;
    }
}
