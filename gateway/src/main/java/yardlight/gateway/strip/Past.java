package yardlight.gateway.strip;

import java.time.Instant;
import java.util.List;
import yardlight.db.reading.Curve;
import yardlight.db.reading.Newest;

/** What was read of the points. */
public interface Past {

    /**
     * The readings of a point in a time, in order, drawn together until they are no more than so many.
     *
     * @param from inclusive
     * @param to exclusive
     * @return without samples when nothing was read
     */
    Curve series(String site, String point, Instant from, Instant to, int most);

    /** The newest reading of each point of a site that has any. */
    List<Newest> newest(String site);
}
