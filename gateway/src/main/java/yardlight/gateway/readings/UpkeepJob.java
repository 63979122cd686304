package yardlight.gateway.readings;

import java.time.InstantSource;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobExecutionContext;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.db.reading.Keep;
import yardlight.db.reading.Upkeep;

/** Packs, sums up and lets go of readings. */
@DisallowConcurrentExecution
class UpkeepJob implements Job {

    private static final Logger LOG = LoggerFactory.getLogger(UpkeepJob.class);

    private final Upkeep upkeep;
    private final Keep keep;
    private final InstantSource clock;

    UpkeepJob(Upkeep upkeep, Keep keep, InstantSource clock) {
        this.upkeep = upkeep;
        this.keep = keep;
        this.clock = clock;
    }

    @Override
    public void execute(JobExecutionContext context) {
        Upkeep.Done done = upkeep.run(keep, clock.instant());
        if (!done.nothing()) {
            LOG.info(
                    "readings: {} packed, {} days summed up, {} let go",
                    done.packed(),
                    done.summed(),
                    done.forgotten());
        }
    }
}
