package yardlight.gateway.calendar;

import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;

/**
 * Ends the calendar first of all when the gateway stops. A job that came up later would find half of what it needs gone;
 * Quartz takes a job that it cannot make for one that never can be made, and never fires it again.
 */
final class EndOfCalendar implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(EndOfCalendar.class);

    private final Scheduler scheduler;
    private volatile boolean running;

    EndOfCalendar(Scheduler scheduler) {
        this.scheduler = scheduler;
    }

    @Override
    public void start() {
        running = true;
    }

    /** Waits for jobs that run, beside the thread that stops everything: that one has a limit. */
    @Override
    public void stop(Runnable callback) {
        new Thread(
                        () -> {
                            stop();
                            callback.run();
                        },
                        "end-of-calendar")
                .start();
    }

    @Override
    public void stop() {
        try {
            scheduler.shutdown(true);
        } catch (SchedulerException e) {
            LOG.warn("the calendar did not end well", e);
        }
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    /** The last to start and the first to stop. */
    @Override
    public int getPhase() {
        return Integer.MAX_VALUE;
    }
}
