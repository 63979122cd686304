package yardlight.gateway.calendar;

import java.time.Instant;
import java.time.InstantSource;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobDataMap;
import org.quartz.JobExecutionContext;
import org.quartz.PersistJobDataAfterExecution;
import yardlight.escalation.Stimulus;
import yardlight.escalation.roster.Roster;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.SetupInForce;

/**
 * Notes in the log who has a tour from now on. How far it got is kept with the job, so that what fell into a stop is made
 * up for: one line for each roster whose person changed since.
 */
@DisallowConcurrentExecution
@PersistJobDataAfterExecution
class HandoverJob implements Job {

    private static final String UNTIL = "until";

    private final SetupInForce setup;
    private final Lane lane;
    private final InstantSource clock;

    HandoverJob(SetupInForce setup, Lane lane, InstantSource clock) {
        this.setup = setup;
        this.lane = lane;
        this.clock = clock;
    }

    @Override
    public void execute(JobExecutionContext context) {
        JobDataMap kept = context.getJobDetail().getJobDataMap();
        Instant now = clock.instant();
        note(kept.containsKey(UNTIL) ? Instant.parse(kept.getString(UNTIL)) : now, now);
        kept.put(UNTIL, now.toString());
    }

    /** Notes every roster whose person at {@code now} is another than at {@code before}. */
    void note(Instant before, Instant now) {
        for (Roster roster : setup.setup().rosters().values()) {
            if (!roster.onCall(before).equals(roster.onCall(now))) {
                lane.decide(new Stimulus.Handover(roster.id()));
            }
        }
    }
}
