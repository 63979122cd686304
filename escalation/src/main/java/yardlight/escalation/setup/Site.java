package yardlight.escalation.setup;

import java.time.ZoneId;

/** An unattended place, with the zone of its clock and the ladder that is climbed for its alarms. */
public record Site(String id, String name, ZoneId zone, String ladder) {

    /** The id of the gateway itself, for its own alarms: a site that is there whether or not somebody has set it up. */
    public static final String GATEWAY = "gateway";
}
