package yardlight.gateway.answer;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Locale;
import org.springframework.stereotype.Component;
import yardlight.gateway.page.Clockface;

/** Times as people at a site read them. */
@Component
class Clocks {

    private final InstantSource clock;

    Clocks(InstantSource clock) {
        this.clock = clock;
    }

    Instant now() {
        return clock.instant();
    }

    String read(Instant instant, ZoneId zone) {
        return new Clockface(zone, now(), Locale.US).read(instant);
    }
}
