package yardlight.gateway;

import com.zaxxer.hikari.HikariDataSource;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.core.env.MapPropertySource;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.channels.Channel;
import yardlight.db.TestDatabase;
import yardlight.db.backup.Restore;
import yardlight.db.backup.Restored;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.clock.Leap;
import yardlight.gateway.clock.Pace;
import yardlight.gateway.clock.Steps;
import yardlight.gateway.lane.CurrentSetup;
import yardlight.gateway.lane.Intake;
import yardlight.gateway.lane.Lane;
import yardlight.gateway.lane.LaneProbe;
import yardlight.gateway.lane.PostedEvent;
import yardlight.gateway.lane.SetupSource;
import yardlight.gateway.link.RealLinks;
import yardlight.gateway.picture.Pictures;

/** Lane, due loop and dispatcher on a real database, without doors. Can be stopped and started again on the same one. */
public final class SmallGateway implements AutoCloseable {

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final Map<String, Setup> DOCUMENTS = new ConcurrentHashMap<>();

    private final AnnotationConfigApplicationContext context = new AnnotationConfigApplicationContext();
    private final JdbcTemplate jdbc;

    /**
     * On which database, and how fast.
     *
     * @param speed how many of its seconds pass in one
     * @param clock in place of one that runs so fast
     */
    public record Place(TestDatabase database, String url, double speed, Optional<InstantSource> clock) {

        public Place(TestDatabase database, String url, double speed) {
            this(database, url, speed, Optional.empty());
        }

        /** Where a minute passes within a look into the outbox, looks have to be quicker, or they hide what is done too often. */
        private Map<String, Object> settings() {
            var settings = new HashMap<String, Object>(Map.of("yardlight.dispatch.receipt-within.sms-mail", "PT2M"));
            if (speed > 100) {
                settings.put("yardlight.dispatch.poll", "10ms");
            }
            return settings;
        }
    }

    /**
     * @param packages below {@code yardlight.gateway}: which parts run
     */
    public SmallGateway(TestDatabase database, String url, Setup setup, List<Channel> channels, String... packages) {
        this(new Place(database, url, 1), setup, channels, packages);
    }

    public SmallGateway(Place place, Setup setup, List<Channel> channels, String... packages) {
        HikariDataSource source = place.database().migrated(place.url());
        Instant began = Instant.now();
        context.getEnvironment().getPropertySources().addFirst(new MapPropertySource("test", place.settings()));
        context.registerBean(DataSource.class, () -> source);
        context.registerBean(JdbcTemplate.class, () -> new JdbcTemplate(source));
        context.registerBean(MeterRegistry.class, SimpleMeterRegistry::new);
        InstantSource clock = place.clock().orElse(() -> now(began, place.speed()));
        context.registerBean(InstantSource.class, () -> clock);
        context.registerBean(Leap.class, () -> clock instanceof Leap leap ? leap::last : Leap.NEVER);
        context.registerBean(Steps.class, () -> clock instanceof Steps steps ? steps::listen : Steps.NONE);
        context.registerBean(Pace.class, () -> Pace.REAL);
        context.registerBean(RealLinks.class, () -> Notice::text);
        context.registerBean(Pictures.class, () -> Pictures.NONE);
        context.registerBean(SetupSource.class, () -> document -> DOCUMENTS.getOrDefault(document, setup));
        channels.forEach(channel -> context.registerBean("channel-" + channel.name(), Channel.class, () -> channel));
        context.scan("yardlight.db.due", "yardlight.db.outbox", "yardlight.db.figures");
        for (String name : packages) {
            context.scan("yardlight.gateway." + name);
        }
        if (List.of(packages).contains("restore")) {
            context.scan("yardlight.db.log");
            restored(place.url()).ifPresent(done -> context.registerBean(Restored.class, () -> done));
        }
        context.refresh();
        jdbc = new JdbcTemplate(source);
        if (jdbc.queryForObject("select setup_version from lane", Integer.class) == 0) {
            store(setup);
        }
    }

    private static Optional<Restored> restored(String url) {
        Path file = Path.of(url.substring("jdbc:h2:file:".length()).split(";", 2)[0]);
        return new Restore(file, "sa", "").finish();
    }

    /** Stores another setup; its document only names it. */
    public void store(Setup setup) {
        String document = "document " + NUMBER.incrementAndGet();
        DOCUMENTS.put(document, setup);
        lane().setup(document, new Stimulus.SetupChanged(setup, "owner"));
    }

    /** The box of Mesa 9 posts that this is active, and critical, now. */
    public void critical(AlarmKey key) {
        Instant now = context.getBean(InstantSource.class).instant();
        var report = new Report(
                key, Optional.of("mesa-9-box"), true, Optional.of(Priority.CRITICAL), Measured.NOTHING, now, false);
        lane().events("mesa-9-box", List.of(new PostedEvent(Optional.empty(), report)), false);
    }

    /** The setup that this gateway goes by now. */
    public Setup setup() {
        return context.getBean(CurrentSetup.class).setup();
    }

    private static Instant now(Instant began, double speed) {
        long passed = Duration.between(began, Instant.now()).toNanos();
        return began.plusNanos((long) (passed * speed)).truncatedTo(ChronoUnit.MILLIS);
    }

    public Lane lane() {
        return context.getBean(Lane.class);
    }

    public Intake intake() {
        return context.getBean(Intake.class);
    }

    public LaneProbe probe() {
        return context.getBean(LaneProbe.class);
    }

    public JdbcTemplate jdbc() {
        return jdbc;
    }

    public MeterRegistry meters() {
        return context.getBean(MeterRegistry.class);
    }

    public DataSource source() {
        return context.getBean(DataSource.class);
    }

    @Override
    public void close() {
        context.close();
    }
}
