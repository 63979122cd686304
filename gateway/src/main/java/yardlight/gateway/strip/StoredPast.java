package yardlight.gateway.strip;

import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Newest;
import yardlight.db.reading.Readings;

/** What is stored. */
@Component
class StoredPast implements Past {

    private final Readings readings;

    StoredPast(Readings readings) {
        this.readings = readings;
    }

    @Override
    public Curve series(String site, String point, Instant from, Instant to, int most) {
        return readings.series(site, point, from, to, most);
    }

    @Override
    public List<Newest> newest(String site) {
        return readings.newest(site);
    }
}
