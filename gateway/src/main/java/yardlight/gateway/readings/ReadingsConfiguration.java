package yardlight.gateway.readings;

import org.quartz.CronScheduleBuilder;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import yardlight.db.reading.Keep;

/** Readings are looked after once an hour. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(ReadingSettings.class)
class ReadingsConfiguration {

    private static final String HOURLY = "0 20 * * * ?";

    @Bean
    static Keep keepOfReadings(ReadingSettings settings) {
        return settings.keep();
    }

    @Bean
    JobDetail readingsJob() {
        return JobBuilder.newJob(UpkeepJob.class)
                .withIdentity("readings")
                .storeDurably()
                .build();
    }

    @Bean
    Trigger readingsTrigger(JobDetail readingsJob) {
        return TriggerBuilder.newTrigger()
                .withIdentity("readings")
                .forJob(readingsJob)
                .withSchedule(CronScheduleBuilder.cronSchedule(HOURLY).withMisfireHandlingInstructionFireAndProceed())
                .build();
    }
}
