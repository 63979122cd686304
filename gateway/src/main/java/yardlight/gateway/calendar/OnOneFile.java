package yardlight.gateway.calendar;

import java.util.Properties;
import javax.sql.DataSource;
import org.springframework.boot.quartz.autoconfigure.QuartzProperties;
import org.springframework.boot.quartz.autoconfigure.SchedulerFactoryBeanCustomizer;
import org.springframework.scheduling.quartz.SchedulerFactoryBean;
import yardlight.db.disk.Vendor;

/**
 * What is different on H2. One process has its file, so there is no cluster: what a stop left half done is taken up at
 * once by the next start, and not only when nobody has heard of the gateway before for a while. And its file does not
 * outlive an interrupt.
 */
final class OnOneFile implements SchedulerFactoryBeanCustomizer {

    private final DataSource source;
    private final QuartzProperties settings;

    OnOneFile(DataSource source, QuartzProperties settings) {
        this.source = source;
        this.settings = settings;
    }

    @Override
    public void customize(SchedulerFactoryBean scheduler) {
        if (Vendor.of(source) == Vendor.H2) {
            var properties = new Properties();
            properties.putAll(settings.getProperties());
            properties.put("org.quartz.jobStore.isClustered", "false");
            scheduler.setQuartzProperties(properties);
            scheduler.setNonTransactionalDataSource(new Undisturbed(source));
        }
    }
}
