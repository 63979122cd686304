package yardlight.db.outbox;

import java.time.Instant;
import yardlight.escalation.notice.Notice;

/**
 * A notice that is to be sent now.
 *
 * @param channel of the line that was chosen when it was queued
 * @param queuedAt when it got into the outbox for its present line
 * @param deferrals how often it was put off since
 * @param doubts how often nobody knows whether it was taken
 */
public record Outgoing(Notice notice, String channel, Instant queuedAt, int deferrals, int doubts) {

    public String id() {
        return notice.id();
    }
}
