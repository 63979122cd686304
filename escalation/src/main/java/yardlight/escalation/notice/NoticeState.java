package yardlight.escalation.notice;

import java.util.Locale;

/** Where a notice stands. */
public enum NoticeState {
    /** Ready to be sent. */
    QUEUED,
    /** Waits for the end of quiet hours, or for room within the contact's limit. */
    HELD,
    /** Its content went out in another notice. */
    BUNDLED,
    /** A carrier has taken it. */
    HANDED_OVER,
    DELIVERED,
    /** No line of the contact took it. */
    REFUSED,
    /** It was over before it was sent. */
    CANCELLED;

    /** The word of the outside contract, such as {@code handed-over}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
