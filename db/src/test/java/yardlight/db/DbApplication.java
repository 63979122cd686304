package yardlight.db;

import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;

/** An application that is nothing but this module. */
@SpringBootConfiguration
@EnableAutoConfiguration
@Import(DbConfiguration.class)
public class DbApplication {

    public static ConfigurableApplicationContext on(TestDatabase database) {
        return new SpringApplicationBuilder(DbApplication.class)
                .web(WebApplicationType.NONE)
                .properties(
                        "spring.datasource.url=" + database.newUrl(),
                        "spring.datasource.username=" + database.user(),
                        "spring.datasource.hikari.maximum-pool-size=4",
                        "spring.flyway.locations=classpath:db/migration/common,classpath:db/migration/{vendor}",
                        "spring.jpa.open-in-view=false",
                        "spring.jpa.hibernate.ddl-auto=validate",
                        "spring.main.banner-mode=off",
                        "logging.level.root=warn")
                .run();
    }
}
