package yardlight.demo.stage;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What can be set about the demo.
 *
 * @param gatewayPort where the gateway answers; another one is taken if somebody has it
 * @param gatewayJar path of the gateway to run; empty for the one that was built beside the demo
 * @param speed how much faster than real time the gateway's clock runs
 * @param curtain the local time at which the clock should stand when everything is ready
 * @param headStart real time that the gateway is given to get ready; its clock begins earlier by that much
 * @param exitAfterNight whether to end after the night, with 0 if it went as written and 1 if not
 */
@ConfigurationProperties("demo")
public record StageSettings(
        @DefaultValue("8080") int gatewayPort,
        @DefaultValue("") String gatewayJar,
        @DefaultValue("48") double speed,
        @DefaultValue("2026-11-25T01:50") LocalDateTime curtain,
        @DefaultValue("PT10S") Duration headStart,
        @DefaultValue("false") boolean exitAfterNight) {

    public StageSettings {
        if (speed < 1 || speed > 600) {
            throw new IllegalArgumentException("demo.speed must be 1 to 600: " + speed);
        }
    }

    /** Where the gateway's clock begins. */
    Instant clockStart(ZoneId zone) {
        return curtain.atZone(zone).toInstant().minusNanos((long) (headStart.toNanos() * speed));
    }
}
