package yardlight.escalation.setup;

import java.time.ZoneId;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import yardlight.escalation.tank.Response;

/**
 * An unattended place, with the zone of its clock and the ladder that is climbed for its alarms.
 *
 * @param fills the feeds that drive what fills its tanks
 * @param empties the feeds that drive what empties them
 * @param inService false while somebody works on the whole place: then none of its points is in service
 * @param response how long it takes to do something about it
 */
public record Site(
        String id,
        String name,
        ZoneId zone,
        String ladder,
        Set<String> fills,
        Set<String> empties,
        boolean inService,
        Response response) {

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

    /** A site that people reach in the usual time. */
    public Site(
            String id,
            String name,
            ZoneId zone,
            String ladder,
            Set<String> fills,
            Set<String> empties,
            boolean inService) {
        this(id, name, zone, ladder, fills, empties, inService, Response.USUAL);
    }

    /** A site whose wells hang on a feed of that name, and whose pump does. */
    public Site(String id, String name, ZoneId zone, String ladder) {
        this(id, name, zone, ladder, FILLS, EMPTIES, true);
    }
}
