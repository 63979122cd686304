package yardlight.gateway.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import yardlight.db.evidence.SignedHead;

/**
 * Who was told of what, and when.
 *
 * @param madeBy login
 * @param from of a period; empty for one alarm
 * @param more whether there were more than are in it: it has the newest
 * @param alarms oldest first
 * @param head of the log when the report was made; it vouches for every line that the report names
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record NotificationReport(
        Instant madeAt,
        String madeBy,
        Optional<String> site,
        Optional<Instant> from,
        Optional<Instant> to,
        boolean more,
        List<Occurred> alarms,
        SignedHead head) {}
