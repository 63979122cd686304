package yardlight.gateway.calendar;

import java.time.Duration;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationListener;
import org.springframework.context.event.ContextClosedEvent;

/**
 * Ends the calendar first of all when the gateway stops. A job that came up later would find half of what it needs gone;
 * Quartz takes a job that it cannot make for one that never can be made, and never fires it again.
 */
final class EndOfCalendar implements ApplicationListener<ContextClosedEvent> {

    private static final Logger LOG = LoggerFactory.getLogger(EndOfCalendar.class);

    /** Jobs that run may end; but while the database is away Quartz waits for it for ever. */
    private static final Duration MOST = Duration.ofSeconds(15);

    private final Scheduler scheduler;

    EndOfCalendar(Scheduler scheduler) {
        this.scheduler = scheduler;
    }

    @Override
    public void onApplicationEvent(ContextClosedEvent closed) {
        var end = new Thread(this::end, "end-of-calendar");
        end.setDaemon(true);
        end.start();
        try {
            end.join(MOST.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void end() {
        try {
            scheduler.shutdown(true);
        } catch (SchedulerException e) {
            LOG.warn("the calendar did not end well", e);
        }
    }
}
