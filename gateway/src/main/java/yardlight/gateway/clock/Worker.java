package yardlight.gateway.clock;

import java.time.Duration;

/** A thread that runs from the start of the gateway to its stop, and shows meanwhile whether it moves. */
public final class Worker implements Pulsing {

    private final Pulse pulse;
    private volatile boolean running;
    private Thread thread;

    /**
     * @param name of the thread, for an operator
     */
    public Worker(String name) {
        this.pulse = new Pulse(name);
    }

    /**
     * @param work goes on while {@link #running}, and calls {@link #beat} whenever it moved
     */
    public void start(Runnable work) {
        running = true;
        thread = new Thread(work, pulse.name());
        thread.start();
        pulse.watch(thread);
    }

    /**
     * Waits until the work has ended. An interrupt ends the waiting, and is left for whoever asks next.
     *
     * @param wake makes the work look at {@link #running}
     * @return whether the work has ended
     */
    public boolean stop(Runnable wake) {
        return stop(wake, Duration.ZERO);
    }

    /**
     * The same for work that somebody else takes up if it does not end in time.
     *
     * @param most how long is waited at the most; zero: until it ends
     */
    public boolean stop(Runnable wake, Duration most) {
        end();
        pulse.rest();
        wake.run();
        try {
            thread.join(most.toMillis());
            return !thread.isAlive();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** For the work itself: there is to be no other round. */
    public void end() {
        running = false;
    }

    /** Whether the work is to go on. */
    public boolean running() {
        return running;
    }

    /** It moved. */
    public void beat() {
        pulse.beat();
    }

    @Override
    public Pulse pulse() {
        return pulse;
    }
}
