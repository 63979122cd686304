package yardlight.gateway.restore;

import java.nio.file.Path;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;
import yardlight.db.backup.Restore;
import yardlight.db.backup.RestoreRefused;
import yardlight.db.backup.Restored;
import yardlight.db.disk.H2File;

/** Puts the backup that {@code yardlight.restore-from} names in place of the database, before anybody opens it. */
final class RestoreAtStart implements ApplicationContextInitializer<ConfigurableApplicationContext>, Ordered {

    private static final Logger LOG = LoggerFactory.getLogger(RestoreAtStart.class);
    private static final String FROM = "yardlight.restore-from";

    /** Before the database is looked at. */
    @Override
    public int getOrder() {
        return 0;
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        ConfigurableEnvironment environment = context.getEnvironment();
        String url = environment.getProperty("spring.datasource.url", "");
        String from = environment.getProperty(FROM, "");
        Optional<H2File> file = H2File.of(url);
        if (file.isPresent()) {
            Restore restore = new Restore(
                    file.get().database(),
                    environment.getProperty("spring.datasource.username", "sa"),
                    environment.getProperty("spring.datasource.password", ""));
            restored(restore, from)
                    .filter(done -> !done.said())
                    .ifPresent(done -> context.getBeanFactory().registerSingleton("restored", done));
        } else if (!from.isBlank()) {
            throw new RestoreRefused(FROM + " is for an H2 file; PostgreSQL has tools of its own", null);
        }
    }

    private static Optional<Restored> restored(Restore restore, String from) {
        Optional<Restored> before = restore.finish();
        if (from.isBlank()) {
            return before;
        }
        Optional<Restored> now = restore.from(Path.of(from));
        if (now.isEmpty()) {
            LOG.warn("{} was put in place at an earlier start and is not again; remove {}", from, FROM);
        }
        now.filter(Restored::putAside)
                .ifPresent(done -> LOG.warn("the database that was there is {} now", done.aside()));
        return now.or(() -> before);
    }
}
