package yardlight.gateway.evidence;

import org.quartz.CronScheduleBuilder;
import org.quartz.DisallowConcurrentExecution;
import org.quartz.Job;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.JobExecutionContext;
import org.quartz.Trigger;
import org.quartz.TriggerBuilder;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Looks every ten minutes whether a head has to leave the house; one of several gateways does it. */
@DisallowConcurrentExecution
class HeadsJob implements Job {

    private static final String EVERY_TEN_MINUTES = "30 */10 * * * ?";

    private final HeadMail mail;

    HeadsJob(HeadMail mail) {
        this.mail = mail;
    }

    @Override
    public void execute(JobExecutionContext context) {
        mail.round();
    }

    /** When it runs. */
    @Configuration(proxyBeanMethods = false)
    static class Plan {

        @Bean
        JobDetail headsJob() {
            return JobBuilder.newJob(HeadsJob.class)
                    .withIdentity("heads")
                    .storeDurably()
                    .build();
        }

        @Bean
        Trigger headsTrigger(JobDetail headsJob) {
            return TriggerBuilder.newTrigger()
                    .withIdentity("heads")
                    .forJob(headsJob)
                    .withSchedule(CronScheduleBuilder.cronSchedule(EVERY_TEN_MINUTES)
                            .withMisfireHandlingInstructionFireAndProceed())
                    .build();
        }
    }
}
