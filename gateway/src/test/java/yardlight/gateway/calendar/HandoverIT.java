package yardlight.gateway.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static yardlight.escalation.Fixtures.at;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.quartz.CronScheduleBuilder;
import org.quartz.JobDetail;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.boot.env.YamlPropertySourceLoader;
import org.springframework.core.env.EnumerablePropertySource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.scheduling.quartz.SchedulerFactoryBean;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.gateway.FakeLane;

/** The calendar as it is set up in the gateway, on PostgreSQL, with minutes that last a second. */
class HandoverIT {

    private static final String QUARTZ = "spring.quartz.properties.";

    private final FakeLane lane = new FakeLane();
    private final AtomicReference<Instant> clock = new AtomicReference<>(at("2026-11-30T06:59"));
    private final AtomicInteger fired = new AtomicInteger();
    private final List<SchedulerFactoryBean> running = new ArrayList<>();

    @AfterEach
    void stop() throws Exception {
        for (SchedulerFactoryBean scheduler : running) {
            scheduler.destroy();
        }
        running.clear();
    }

    @Test
    void a_handover_is_noted_by_one_of_two_gateways() throws Exception {
        DataSource source = TestDatabase.POSTGRESQL.newDataSource();
        start(source);
        start(source);
        firedAgain(2);

        clock.set(at("2026-11-30T07:01"));

        firedAgain(4);
        assertThat(lane.decided).containsExactly(new Stimulus.Handover("crew"));
    }

    private void firedAgain(int times) {
        int before = fired.get();
        await().atMost(Duration.ofSeconds(40)).until(() -> fired.get() >= before + times);
    }

    private void start(DataSource source) throws Exception {
        var factory = new SchedulerFactoryBean();
        factory.setDataSource(source);
        factory.setQuartzProperties(properties());
        factory.setJobFactory((bundle, scheduler) -> {
            fired.incrementAndGet();
            return new HandoverJob(Fixtures::theSetup, lane, clock::get);
        });
        JobDetail job = new CalendarConfiguration().handoverJob();
        factory.setJobDetails(job);
        factory.setTriggers(everySecond(job));
        factory.setWaitForJobsToCompleteOnShutdown(true);
        factory.afterPropertiesSet();
        factory.start();
        running.add(factory);
    }

    private static Trigger everySecond(JobDetail job) {
        return TriggerBuilder.newTrigger()
                .withIdentity("handover")
                .forJob(job)
                .withSchedule(
                        CronScheduleBuilder.cronSchedule("* * * * * ?").withMisfireHandlingInstructionFireAndProceed())
                .build();
    }

    /** Those of the application, so that this is its cluster and not one of the test's own. */
    private static Properties properties() throws IOException {
        var properties = new Properties();
        var source = (EnumerablePropertySource<?>) new YamlPropertySourceLoader()
                .load("application", new ClassPathResource("application.yaml"))
                .get(0);
        for (String name : source.getPropertyNames()) {
            if (name.startsWith(QUARTZ)) {
                properties.put(
                        name.substring(QUARTZ.length()),
                        source.getProperty(name).toString());
            }
        }
        assertThat(properties).containsEntry("org.quartz.jobStore.isClustered", "true");
        return properties;
    }
}
