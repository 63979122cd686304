package yardlight.gateway.calendar;

import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import yardlight.db.backup.Backups;

/** Makes the nightly backup of H2; on PostgreSQL there is nothing to do. */
@DisallowConcurrentExecution
class BackupJob implements Job {

    private static final Logger LOG = LoggerFactory.getLogger(BackupJob.class);

    private final Backups backups;
    private final CalendarSettings settings;
    private final InstantSource clock;
    private final Path folder;

    BackupJob(
            Backups backups, CalendarSettings settings, InstantSource clock, @Value("${yardlight.home}") String home) {
        this.backups = backups;
        this.settings = settings;
        this.clock = clock;
        this.folder = Path.of(home).resolve("backup");
    }

    @Override
    public void execute(JobExecutionContext context) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), settings.zone());
        try {
            backups.back(folder, today, settings.backups()).ifPresent(file -> LOG.info("backup written: {}", file));
        } catch (RuntimeException e) {
            LOG.error("no backup tonight; look at free space and rights in {}", folder, e);
        }
    }
}
