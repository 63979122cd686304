package yardlight.gateway.calendar;

import java.time.InstantSource;
import java.util.Map;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.retention.Retention;

/** Deletes what is older than it has to be kept. */
@DisallowConcurrentExecution
class RetentionJob implements Job {

    private static final Logger LOG = LoggerFactory.getLogger(RetentionJob.class);

    private final Retention retention;
    private final CalendarSettings settings;
    private final InstantSource clock;

    RetentionJob(Retention retention, CalendarSettings settings, InstantSource clock) {
        this.retention = retention;
        this.settings = settings;
        this.clock = clock;
    }

    @Override
    public void execute(JobExecutionContext context) {
        Map<String, Integer> swept = retention.sweep(settings.ages(), clock.instant());
        if (swept.values().stream().anyMatch(rows -> rows > 0)) {
            LOG.info("retention: deleted {}", swept);
        }
    }
}
