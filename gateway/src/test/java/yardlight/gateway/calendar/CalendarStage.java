package yardlight.gateway.calendar;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.quartz.CronScheduleBuilder;
import org.quartz.JobDetail;
import org.quartz.JobExecutionContext;
import org.quartz.JobExecutionException;
import org.quartz.JobListener;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.quartz.listeners.JobListenerSupport;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.quartz.autoconfigure.QuartzAutoConfiguration;
import org.springframework.boot.quartz.autoconfigure.SchedulerFactoryBeanCustomizer;
import org.springframework.boot.test.context.ConfigDataApplicationContextInitializer;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.db.backup.Backups;
import yardlight.db.retention.Retention;
import yardlight.escalation.Fixtures;
import yardlight.gateway.FakeLane;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.setup.SetupInForce;

/**
 * The calendar of a gateway as its owner has it, with the settings of the application, on a real database; its minutes
 * last a second. Lives in this process or in one of its own that says what it does.
 */
final class CalendarStage implements AutoCloseable {

    private final AnnotationConfigApplicationContext context = new AnnotationConfigApplicationContext();
    private final FakeLane lane = new FakeLane();
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicReference<Instant> clock;
    private final Needed needed;

    /**
     * @param now what the gateway's clock shows, until it is {@link #set}
     */
    CalendarStage(TestDatabase database, String url, Instant now) {
        clock = new AtomicReference<>(now);
        HikariDataSource source = database.migrated(url);
        new ConfigDataApplicationContextInitializer().initialize(context);
        context.getEnvironment().getPropertySources().addFirst(new MapPropertySource("test", settings(url)));
        context.registerBean(HikariDataSource.class, () -> source);
        context.registerBean(JdbcTemplate.class, () -> new JdbcTemplate(source));
        context.registerBean(InstantSource.class, () -> clock::get);
        context.registerBean(SetupInForce.class, () -> Fixtures::theSetup);
        context.registerBean(Lane.class, () -> lane);
        context.registerBean(Needed.class);
        context.register(Backups.class, Retention.class);
        context.registerBean("handoverTrigger", Trigger.class, () -> everySecond(context.getBean("handoverJob")));
        context.registerBean(
                SchedulerFactoryBeanCustomizer.class, () -> factory -> factory.setGlobalJobListeners(ears()));
        context.register(CalendarConfiguration.class, QuartzAutoConfiguration.class);
        context.refresh();
        needed = context.getBean(Needed.class);
    }

    /** Quartz knows a database by the name of its scheduler, in all of a process: other gateways' are not to get this one. */
    private static Map<String, Object> settings(String url) {
        return Map.of(
                "yardlight.home",
                "target/home",
                "spring.quartz.properties.org.quartz.scheduler.instanceName",
                "calendar-" + Integer.toHexString(url.hashCode()),
                "spring.quartz.properties.org.quartz.jobStore.clusterCheckinInterval",
                "500");
    }

    private static Trigger everySecond(Object job) {
        return TriggerBuilder.newTrigger()
                .withIdentity("handover")
                .forJob((JobDetail) job)
                .withSchedule(
                        CronScheduleBuilder.cronSchedule("* * * * * ?").withMisfireHandlingInstructionFireAndProceed())
                .build();
    }

    private JobListener ears() {
        return new JobListenerSupport() {
            @Override
            public String getName() {
                return "ears";
            }

            @Override
            public void jobWasExecuted(JobExecutionContext job, JobExecutionException trouble) {
                System.out.println("done " + done.incrementAndGet());
            }
        };
    }

    /** How many jobs have been done. */
    int done() {
        return done.get();
    }

    void set(Instant now) {
        clock.set(now);
    }

    FakeLane lane() {
        return lane;
    }

    /** Whether the calendar had ended when what its jobs need was stopped. */
    boolean endedFirst() {
        return needed.endedFirst;
    }

    boolean clustered() throws SchedulerException {
        return context.getBean(Scheduler.class).getMetaData().isJobStoreClustered();
    }

    @Override
    public void close() {
        context.close();
    }

    /** Runs one until it is killed. */
    public static void main(String[] arguments) {
        new CalendarStage(TestDatabase.valueOf(arguments[0]), arguments[1], Instant.parse(arguments[2]));
    }

    /** Stands for the lane, and stops when it does. */
    private static final class Needed implements SmartLifecycle {

        private final ObjectProvider<Scheduler> scheduler;
        private boolean running;
        private boolean endedFirst;

        Needed(ObjectProvider<Scheduler> scheduler) {
            this.scheduler = scheduler;
        }

        @Override
        public void start() {
            running = true;
        }

        @Override
        public void stop() {
            running = false;
            try {
                endedFirst = scheduler.getObject().isShutdown();
            } catch (SchedulerException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public boolean isRunning() {
            return running;
        }

        @Override
        public int getPhase() {
            return 100;
        }
    }
}
