package yardlight.escalation.setup;

import java.time.ZoneId;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.tank.Response;

/**
 * An unattended place, with the zone of its clock and the ladder that is climbed for its alarms.
 *
 * @param fills the feeds that drive what fills its tanks
 * @param empties the feeds that drive what empties them
 * @param inService false while somebody works on the whole place: then none of its points is in service
 * @param response how long it takes to do something about it
 * @param shutIn how it is asked to shut in, if it may be asked at all; this alone turns nothing on
 */
public record Site(
        String id,
        String name,
        ZoneId zone,
        String ladder,
        Set<String> fills,
        Set<String> empties,
        boolean inService,
        Response response,
        Optional<Terms> shutIn) {

    /** The id of the gateway itself, for its own alarms: a site that is there whether or not somebody has set it up. */
    public static final String GATEWAY = "gateway";

    /** Unless somebody says otherwise. */
    public static final Set<String> FILLS = Set.of("wells");

    public static final Set<String> EMPTIES = Set.of("pump");

    public Site {
        // Sorted, so that the same setup gives the same record every time.
        fills = Collections.unmodifiableSet(new TreeSet<>(fills));
        empties = Collections.unmodifiableSet(new TreeSet<>(empties));
    }

    /** A site that people reach in the usual time, and that is never asked to shut in. */
    public Site(
            String id,
            String name,
            ZoneId zone,
            String ladder,
            Set<String> fills,
            Set<String> empties,
            boolean inService) {
        this(id, name, zone, ladder, fills, empties, inService, Response.USUAL, Optional.empty());
    }

    /** A site whose wells hang on a feed of that name, and whose pump does. */
    public Site(String id, String name, ZoneId zone, String ladder) {
        this(id, name, zone, ladder, FILLS, EMPTIES, true);
    }

    /** The same site, asked to shut in by these terms once somebody has turned that on. */
    public Site withShutIn(Terms terms) {
        return new Site(id, name, zone, ladder, fills, empties, inService, response, Optional.of(terms));
    }
}
