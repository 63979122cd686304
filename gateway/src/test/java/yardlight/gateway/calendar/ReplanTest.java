package yardlight.gateway.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.quartz.CronTrigger;
import org.quartz.JobDetail;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.Trigger;
import org.quartz.impl.StdSchedulerFactory;

class ReplanTest {

    private final CalendarConfiguration calendar = new CalendarConfiguration();
    private final JobDetail job = calendar.handoverJob();
    private Scheduler scheduler;

    @BeforeEach
    void keep() throws SchedulerException {
        var properties = new Properties();
        properties.put("org.quartz.scheduler.instanceName", "replan");
        properties.put("org.quartz.threadPool.threadCount", "1");
        scheduler = new StdSchedulerFactory(properties).getScheduler();
        job.getJobDataMap().put("until", "2026-11-25T15:00:00Z");
        scheduler.scheduleJob(job, in("America/Denver"));
    }

    @AfterEach
    void shut() throws SchedulerException {
        scheduler.shutdown();
    }

    @Test
    void takes_over_another_zone_and_keeps_what_the_job_knows() throws SchedulerException {
        new Replan(scheduler, List.of(in("Europe/Paris"))).afterPropertiesSet();

        assertThat(kept().getTimeZone().getID()).isEqualTo("Europe/Paris");
        assertThat(scheduler.getJobDetail(job.getKey()).getJobDataMap()).containsKey("until");
    }

    @Test
    void leaves_alone_what_is_as_it_was() throws SchedulerException {
        CronTrigger before = kept();

        new Replan(scheduler, List.of(in("America/Denver"))).afterPropertiesSet();

        assertThat(kept().getStartTime()).isEqualTo(before.getStartTime());
        assertThat(kept().getTimeZone().getID()).isEqualTo("America/Denver");
    }

    @Test
    void goes_on_with_what_was_given_up_because_a_job_could_not_be_made() throws SchedulerException {
        Trigger trigger = in("America/Denver");
        scheduler.setJobFactory((bundle, whose) -> {
            throw new SchedulerException("the gateway is stopping");
        });
        scheduler.start();
        scheduler.triggerJob(job.getKey());
        await().until(() -> scheduler.getTriggerState(trigger.getKey()) == Trigger.TriggerState.ERROR);

        new Replan(scheduler, List.of(trigger)).afterPropertiesSet();

        assertThat(scheduler.getTriggerState(trigger.getKey())).isEqualTo(Trigger.TriggerState.NORMAL);
    }

    private CronTrigger kept() throws SchedulerException {
        return (CronTrigger) scheduler.getTrigger(in("America/Denver").getKey());
    }

    private Trigger in(String zone) {
        return calendar.handoverTrigger(
                job, new CalendarSettings(ZoneId.of(zone), Duration.ofDays(90), Duration.ofDays(1098), 14));
    }
}
