package yardlight.db.due;

import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.disk.Vendor;

/** Chooses the way of claiming that suits the database. */
@Configuration(proxyBeanMethods = false)
class DueConfiguration {

    @Bean
    Dues dues(DataSource source) {
        var jdbc = new JdbcTemplate(source);
        return switch (Vendor.of(source)) {
            case H2 -> new H2Dues(jdbc);
            case POSTGRESQL -> new PostgresDues(jdbc, UUID.randomUUID().toString());
        };
    }
}
