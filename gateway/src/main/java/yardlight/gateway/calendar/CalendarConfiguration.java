package yardlight.gateway.calendar;

import java.util.List;
import java.util.TimeZone;
import javax.sql.DataSource;
import org.quartz.CronScheduleBuilder;
import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.Scheduler;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.quartz.autoconfigure.QuartzProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What is done when, by the clock on the wall. A time that was missed is made up for once. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(CalendarSettings.class)
class CalendarConfiguration {

    private static final String EVERY_MINUTE = "0 * * * * ?";
    private static final String NIGHTLY_BACKUP = "0 40 2 * * ?";
    private static final String NIGHTLY_RETENTION = "0 10 3 * * ?";

    @Bean
    JobDetail handoverJob() {
        return job("handover", HandoverJob.class);
    }

    @Bean
    Trigger handoverTrigger(JobDetail handoverJob, CalendarSettings settings) {
        return trigger(handoverJob, EVERY_MINUTE, settings);
    }

    @Bean
    JobDetail backupJob() {
        return job("backup", BackupJob.class);
    }

    @Bean
    Trigger backupTrigger(JobDetail backupJob, CalendarSettings settings) {
        return trigger(backupJob, NIGHTLY_BACKUP, settings);
    }

    @Bean
    JobDetail retentionJob() {
        return job("retention", RetentionJob.class);
    }

    @Bean
    Trigger retentionTrigger(JobDetail retentionJob, CalendarSettings settings) {
        return trigger(retentionJob, NIGHTLY_RETENTION, settings);
    }

    @Bean
    Replan replan(Scheduler scheduler, List<Trigger> triggers) {
        return new Replan(scheduler, triggers);
    }

    @Bean
    OnOneFile onOneFile(DataSource source, QuartzProperties settings) {
        return new OnOneFile(source, settings);
    }

    @Bean
    EndOfCalendar endOfCalendar(Scheduler scheduler) {
        return new EndOfCalendar(scheduler);
    }

    private static JobDetail job(String name, Class<? extends Job> job) {
        return JobBuilder.newJob(job).withIdentity(name).storeDurably().build();
    }

    private static Trigger trigger(JobDetail job, String cron, CalendarSettings settings) {
        return TriggerBuilder.newTrigger()
                .withIdentity(job.getKey().getName())
                .forJob(job)
                .withSchedule(CronScheduleBuilder.cronSchedule(cron)
                        .inTimeZone(TimeZone.getTimeZone(settings.zone()))
                        .withMisfireHandlingInstructionFireAndProceed())
                .build();
    }
}
