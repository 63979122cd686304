package yardlight.escalation.setup;

import java.time.ZoneId;

/** An unattended place, with the zone of its clock and the ladder that is climbed for its alarms. */
public record Site(String id, String name, ZoneId zone, String ladder) {}
