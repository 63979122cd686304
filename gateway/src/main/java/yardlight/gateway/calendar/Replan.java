package yardlight.gateway.calendar;

import java.util.List;
import org.quartz.CronTrigger;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.Trigger;
import org.springframework.beans.factory.InitializingBean;

/**
 * Takes over times and zones that changed since the last start; what is as it was stays, and what was missed with it. What
 * Quartz has given up because a job could not be made once, goes on.
 */
final class Replan implements InitializingBean {

    private final Scheduler scheduler;
    private final List<Trigger> wanted;

    Replan(Scheduler scheduler, List<Trigger> wanted) {
        this.scheduler = scheduler;
        this.wanted = List.copyOf(wanted);
    }

    @Override
    public void afterPropertiesSet() throws SchedulerException {
        for (Trigger trigger : wanted) {
            Trigger kept = scheduler.getTrigger(trigger.getKey());
            if (kept != null && !same(kept, trigger)) {
                scheduler.rescheduleJob(kept.getKey(), trigger);
            }
            scheduler.resetTriggerFromErrorState(trigger.getKey());
        }
    }

    private static boolean same(Trigger kept, Trigger wanted) {
        return kept instanceof CronTrigger one
                && wanted instanceof CronTrigger other
                && one.getCronExpression().equals(other.getCronExpression())
                && one.getTimeZone().getID().equals(other.getTimeZone().getID());
    }
}
