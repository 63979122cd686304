package yardlight.gateway.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.quartz.Job;
import org.quartz.JobKey;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.TriggerKey;
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.reading.Slot;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

/** That readings get smaller with age is asked for by the calendar. */
@GatewayTest
class UpkeepTest {

    private final Scheduler scheduler;
    private final AutowireCapableBeanFactory beans;
    private final JdbcTemplate jdbc;

    UpkeepTest(Scheduler scheduler, AutowireCapableBeanFactory beans, JdbcTemplate jdbc) {
        this.scheduler = scheduler;
        this.beans = beans;
        this.jdbc = jdbc;
    }

    @AfterEach
    void clear() {
        jdbc.update("delete from reading");
        jdbc.update("delete from reading_day");
        jdbc.update("delete from reading_series");
    }

    @Test
    void is_due_at_twenty_past_each_hour() throws SchedulerException {
        assertThat(scheduler.getTrigger(TriggerKey.triggerKey("readings")).getNextFireTime())
                .satisfies(next ->
                        assertThat(next.toInstant().getEpochSecond() % 3600).isEqualTo(20 * 60));
    }

    @Test
    void packs_what_is_over() throws Exception {
        jdbc.update("insert into reading_series values (78, 'mesa-9', 'flow-line', 'psi', 0)");
        jdbc.update("insert into reading values (?, 41)", Slot.of(78, TestGateway.NOW.minusSeconds(86_400)));
        jdbc.update("insert into reading values (?, 42)", Slot.of(78, TestGateway.NOW));

        Class<? extends Job> job =
                scheduler.getJobDetail(JobKey.jobKey("readings")).getJobClass();
        beans.createBean(job).execute(null);

        assertThat(jdbc.queryForObject("select count(*) from reading", Integer.class))
                .isEqualTo(1);
        assertThat(jdbc.queryForObject("select count(*) from reading_day", Integer.class))
                .isEqualTo(1);
    }
}
