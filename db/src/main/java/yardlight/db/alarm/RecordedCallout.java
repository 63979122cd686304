package yardlight.db.alarm;

import java.util.List;
import yardlight.escalation.ladder.Callout;

/**
 * A callout with its notices.
 *
 * @param notices in the order in which they were made
 */
public record RecordedCallout(Callout callout, List<RecordedNotice> notices) {
    public RecordedCallout {
        notices = List.copyOf(notices);
    }
}
