package yardlight.gateway.calendar;

import java.time.Duration;
import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.db.retention.Ages;

/**
 * When the calendar work is done and how much is kept.
 *
 * @param zone zone of the nightly times; the machine's own by default
 * @param events how long the boxes' own posts are kept
 * @param record how long alarms, callouts, notices and the log are kept
 * @param backups how many nightly backups of H2 are kept
 */
@ConfigurationProperties("yardlight.keep")
record CalendarSettings(
        ZoneId zone,
        @DefaultValue("90d") Duration events,
        @DefaultValue("1098d") Duration record,
        @DefaultValue("14") int backups) {

    CalendarSettings {
        zone = zone == null ? ZoneId.systemDefault() : zone;
    }

    Ages ages() {
        return new Ages(events, record);
    }
}
