package yardlight.db.outbox;

import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.disk.Vendor;

/** Chooses the way of claiming that suits the database. */
@Configuration(proxyBeanMethods = false)
class OutboxConfiguration {

    @Bean
    DownCarriers downCarriers(DataSource source) {
        return new DownCarriers(new JdbcTemplate(source));
    }

    @Bean
    Outbox outbox(DataSource source) {
        var jdbc = new JdbcTemplate(source);
        return switch (Vendor.of(source)) {
            case H2 -> new H2Outbox(jdbc);
            case POSTGRESQL -> new PostgresOutbox(jdbc, UUID.randomUUID().toString(), System::nanoTime);
        };
    }
}
