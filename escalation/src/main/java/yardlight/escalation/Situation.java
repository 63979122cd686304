package yardlight.escalation;

import java.util.List;
import java.util.Optional;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.Standing;
import yardlight.escalation.swap.Offer;

/**
 * The old state, as far as a decision may look at it. The simulation holds all of it; the gateway loads the slice that
 * a batch needs. What is asked for and was never written is as new: a normal alarm, an empty desk.
 */
public interface Situation {

    Setup setup();

    Alarm alarm(AlarmKey key);

    /** The alarms of a site that are not normal, in the order of their keys. */
    List<Alarm> alarmsAt(String site);

    Optional<Callout> callout(String id);

    /** The callouts of a site that are not over, oldest first. */
    List<Callout> calloutsAt(String site);

    Flood flood(String site);

    Desk desk(String contact);

    Optional<Notice> notice(String id);

    /** The notices of a callout that were not sent yet; news among them is nobody's concern. */
    List<Notice> unsent(String callout);

    /** The notices that are to be sent by this channel now. */
    List<Notice> queued(String channel);

    Optional<BoxWatch> box(String id);

    /** The newest silence on this path, over or not. */
    Optional<Absence> absence(Path path);

    /** What is known of a line; one of which nothing is known is as new. */
    LineHealth health(LineHealth.Key line);

    /** What is remembered of a point's readings; one that was never read is as new. */
    Gauge gauge(Gauge.Key key);

    /** How a site stands with shutting in; one of which nothing is known is off. */
    Standing standing(String site);

    /** A turn that somebody offered, whatever became of it. */
    Optional<Offer> offer(String id);

    /** What others of a roster were asked to take and can still take, as far as nobody looks at the time; in the order of their ids. */
    List<Offer> offers(String roster);
}
