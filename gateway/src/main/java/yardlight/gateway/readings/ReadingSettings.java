package yardlight.gateway.readings;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import yardlight.db.reading.Keep;

/**
 * How long readings are kept, beside what else is kept.
 *
 * @param readings how long at all
 * @param wholeReadings how long each one as it came
 * @param readingStep of the sums afterwards
 */
@ConfigurationProperties("yardlight.keep")
record ReadingSettings(
        @DefaultValue("400d") Duration readings,
        @DefaultValue("30d") Duration wholeReadings,
        @DefaultValue("15m") Duration readingStep) {

    Keep keep() {
        return new Keep(readings, wholeReadings, readingStep);
    }
}
