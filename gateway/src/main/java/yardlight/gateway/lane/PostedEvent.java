package yardlight.gateway.lane;

import java.util.Optional;
import yardlight.escalation.alarm.Report;

/**
 * An event as a box posted it.
 *
 * @param id the box's own name for it; the same box and id again is a duplicate for 30 days
 * @param report what it says
 */
public record PostedEvent(Optional<String> id, Report report) {}
