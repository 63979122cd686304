package yardlight.gateway.evidence;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Who gets the head of the log by mail, outside this house.
 *
 * @param to mail addresses; nobody by default
 * @param at from when on each day
 * @param zone of that time; the machine's own by default
 */
@ConfigurationProperties("yardlight.heads")
record HeadsSettings(List<String> to, @DefaultValue("06:00") LocalTime at, ZoneId zone) {

    HeadsSettings {
        to = to == null ? List.of() : List.copyOf(to);
        zone = zone == null ? ZoneId.systemDefault() : zone;
    }
}
