package yardlight.gateway.clock;

import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;

/** Shows whether a thread that ought to run for ever still does. Goes by elapsed time, not by the time of day. */
public final class Pulse {

    private final String name;
    private final LongSupplier nanos;
    private volatile Thread thread;
    private volatile long last;

    /**
     * @param name of the thread, for an operator
     */
    public Pulse(String name) {
        this(name, System::nanoTime);
    }

    Pulse(String name, LongSupplier nanos) {
        this.name = name;
        this.nanos = nanos;
    }

    public String name() {
        return name;
    }

    /** This thread is watched from now on. */
    public void watch(Thread watched) {
        beat();
        thread = watched;
    }

    /** It moved. */
    public void beat() {
        last = nanos.getAsLong();
    }

    /** It was asked to end: that is no trouble. */
    public void rest() {
        thread = null;
    }

    /**
     * What is wrong with it, if anything is.
     *
     * @param most how long it may stand still
     */
    public Optional<String> trouble(Duration most) {
        Thread watched = thread;
        Duration still = Duration.ofNanos(nanos.getAsLong() - last);
        if (watched == null) {
            return Optional.empty();
        }
        if (!watched.isAlive()) {
            return Optional.of("has ended; restart the gateway");
        }
        return still.compareTo(most) > 0
                ? Optional.of("has not moved for " + still.toSeconds() + " s; restart the gateway")
                : Optional.empty();
    }
}
