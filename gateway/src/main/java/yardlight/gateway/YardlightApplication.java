package yardlight.gateway;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.actuate.autoconfigure.info.InfoContributorAutoConfiguration;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.autoconfigure.info.ProjectInfoAutoConfiguration;
import org.springframework.boot.autoconfigure.task.TaskExecutionAutoConfiguration;
import org.springframework.boot.autoconfigure.task.TaskSchedulingAutoConfiguration;
import org.springframework.boot.health.autoconfigure.application.SslHealthContributorAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcClientAutoConfiguration;
import org.springframework.boot.micrometer.metrics.autoconfigure.ssl.SslMetricsAutoConfiguration;
import org.springframework.boot.micrometer.metrics.autoconfigure.task.TaskExecutorMetricsAutoConfiguration;
import org.springframework.boot.micrometer.observation.autoconfigure.ScheduledTasksObservationAutoConfiguration;
import org.springframework.context.annotation.Import;
import yardlight.db.DbConfiguration;

/**
 * The gateway. What is left out would be made at each start and asked by nobody: pools and schedules beside our own
 * threads, and what is told of key stores, builds and pools that there are not. See docs/decisions/small.md.
 */
@Import(DbConfiguration.class)
@SpringBootApplication(
        exclude = {
            TaskExecutionAutoConfiguration.class,
            TaskSchedulingAutoConfiguration.class,
            TaskExecutorMetricsAutoConfiguration.class,
            ScheduledTasksObservationAutoConfiguration.class,
            SslHealthContributorAutoConfiguration.class,
            SslMetricsAutoConfiguration.class,
            InfoContributorAutoConfiguration.class,
            ProjectInfoAutoConfiguration.class,
            JdbcClientAutoConfiguration.class
        })
public class YardlightApplication {

    public static void main(String[] args) {
        SpringApplication.run(YardlightApplication.class, args);
    }
}
