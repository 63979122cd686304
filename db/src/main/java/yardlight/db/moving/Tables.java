package yardlight.db.moving;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which tables move. A test holds this against the databases: a table that is in neither list is one too many. */
final class Tables {

    /** The one row of the writer, which every database has from the beginning. */
    static final String LANE = "lane";

    /** In this order, so that a row comes after the one that it refers to. */
    static final List<String> MOVING = List.of(
            LANE,
            "secret",
            "setup_version",
            "person",
            "passkey_handle",
            "passkey",
            "invitation",
            "device",
            "box_key",
            "signed_post",
            "calendar_feed",
            "event",
            "alarm",
            "callout",
            "notice",
            "notice_callout",
            "outbox",
            "attempt",
            "desk",
            "site_state",
            "box_watch",
            "due",
            "link",
            "incoming_text",
            "receipt",
            "line_health",
            "silence",
            "gauge",
            "shut_in",
            "swap",
            "reading_series",
            "reading",
            "reading_day",
            "sent_head",
            "log_tile",
            "log_line");

    /** What stays, and why. */
    static final Map<String, String> STAYING = Map.of(
            "flyway_schema_history", "what was done to these tables is the database's own history",
            "sitting", "a sign-in ends with the process that keeps it");

    /** Quartz's own tables: the schedule is made anew at each start. */
    static final String STAYING_PREFIX = "qrtz_";

    /** Who is at work on a row at this moment: nobody is, where it arrives. Only PostgreSQL has the leases. */
    static final Set<String> STAYING_COLUMNS =
            Set.of("due.claimed_by", "due.leased_until", "outbox.claimed_by", "outbox.leased_until");

    private Tables() {}
}
