package yardlight.gateway.lane;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.escalation.Answer;
import yardlight.escalation.Entry;
import yardlight.escalation.Stimulus;
import yardlight.escalation.heartbeat.Heartbeat;

/** Queues what is handed in and waits until the lane's thread has stored it. A full queue refuses at once. */
final class JournalLane implements Lane, Intake, LogBook, LaneProbe {

    private static final int MOST_WAITING = 20_000;
    private static final long PATIENCE_SECONDS = 15;
    private static final String STOPPING = "the gateway is stopping";

    private final BlockingQueue<Handed<?>> queue = new LinkedBlockingQueue<>(MOST_WAITING);
    private final Duration company;
    private final Instant started;
    private volatile boolean open;

    /**
     * @param company how long a heartbeat waits for others; an event never does
     * @param started since when this gateway is there: a gap across that says nothing of a box's habits
     */
    JournalLane(Duration company, Instant started) {
        this.company = company;
        this.started = started;
    }

    BlockingQueue<Handed<?>> queue() {
        return queue;
    }

    /** The first thing stored shows since when this gateway is there. */
    void open() {
        open = true;
        queue.offer(new Handed<>(new ProbeWork()));
    }

    /** Takes nothing more in; what is in the queue is still stored. The last thing shows until when this gateway was there. */
    void shut() {
        open = false;
        queue.offer(new Handed<>(new ProbeWork()));
    }

    /** Nobody stores any more: whoever slipped in at the last moment is told so. */
    void giveUpTheRest() {
        for (Handed<?> rest = queue.poll(); rest != null; rest = queue.poll()) {
            rest.giveUp(new LaneBusy(STOPPING, null));
        }
    }

    @Override
    public List<Answer.Result> events(String box, List<PostedEvent> events, boolean spent) {
        return await(offer(new PostedWork(box, List.copyOf(events), spent)));
    }

    @Override
    public List<Fate> readings(String box, List<PostedReading> readings, Instant oldest, boolean spent) {
        return await(offer(new ReadingsWork(box, List.copyOf(readings), oldest, spent)));
    }

    @Override
    public Answer heartbeat(String box, Heartbeat heartbeat) {
        return await(offer(new BeatWork(new Stimulus.Beat(box, heartbeat, started))));
    }

    @Override
    public Answer decide(Stimulus stimulus) {
        return await(put(stimulus));
    }

    @Override
    public Answer setup(String document, Stimulus.SetupChanged change) {
        return await(offer(new SetupWork(document, change, OptionalInt.empty())));
    }

    @Override
    public Answer setup(String document, Stimulus.SetupChanged change, int seen) {
        return await(offer(new SetupWork(document, change, OptionalInt.of(seen))));
    }

    @Override
    public CompletableFuture<Answer> put(Stimulus stimulus) {
        if (stimulus.kind() == Stimulus.Kind.SETUP_CHANGED) {
            throw new IllegalArgumentException("another setup must come with its document");
        }
        return offer(new StimulusWork(stimulus));
    }

    @Override
    public CompletableFuture<Answer> put(Tried tried) {
        return offer(new TriedWork(tried));
    }

    @Override
    public CompletableFuture<Answer> put(Entry line) {
        return offer(new LineWork(line));
    }

    @Override
    public CompletableFuture<Void> probe() {
        return offer(new ProbeWork());
    }

    private <T> CompletableFuture<T> offer(Work<T> work) {
        var handed = new Handed<>(work);
        if (!open) {
            handed.giveUp(new LaneBusy(STOPPING, null));
        } else if (!queue.offer(handed)) {
            handed.giveUp(new LaneBusy("too much is waiting to be stored", null));
        }
        return handed.waiting();
    }

    private static <T> T await(CompletableFuture<T> waiting) {
        try {
            return waiting.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } catch (TimeoutException e) {
            throw new LaneBusy("the database takes too long", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new LaneBusy("interrupted while waiting for the database", e);
        }
    }

    /**
     * The next batch: waits for one thing, and takes what has gathered behind it without waiting further. Heartbeats alone
     * wait a moment for company.
     */
    List<Handed<?>> next(int most, int mostWeight, long waitMillis) throws InterruptedException {
        var batch = new ArrayList<Handed<?>>();
        Handed<?> next = queue.poll(waitMillis, TimeUnit.MILLISECONDS);
        long until = System.nanoTime() + company.toNanos();
        int weight = 0;
        boolean patient = true;
        while (next != null) {
            batch.add(next);
            weight += next.weight();
            patient &= next.patient();
            boolean full = batch.size() >= most || weight >= mostWeight;
            next = full ? null : queue.poll(patient ? until - System.nanoTime() : 0, TimeUnit.NANOSECONDS);
        }
        return batch;
    }
}
