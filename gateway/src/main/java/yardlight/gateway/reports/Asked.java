package yardlight.gateway.reports;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/**
 * What a notification report is asked about: one alarm, or everything that occurred in a period.
 *
 * @param alarm id of an occurrence; the others do not count then
 * @param from inclusive
 * @param to exclusive
 */
record Asked(Optional<String> alarm, Optional<String> site, Instant from, Instant to) {

    static final Duration LONGEST = Duration.ofDays(400);

    private static final Duration USUAL = Duration.ofDays(30);

    static Asked alarm(String id) {
        return new Asked(Optional.of(id), Optional.empty(), Instant.MIN, Instant.MAX);
    }

    /**
     * Reads {@code alarm}, or {@code site}, {@code from} and {@code to}: without a beginning the 30 days before the end,
     * without an end up to now.
     *
     * @throws Problem 422 when it is longer than 400 days, or ends before it begins
     */
    static Asked of(Query query, Instant now) {
        Optional<String> alarm = query.text("alarm");
        Optional<Instant> from = query.instant("from");
        Optional<Instant> to = query.instant("to");
        query.orNothing();
        if (alarm.isPresent()) {
            return alarm(alarm.get());
        }
        Instant end = to.orElse(now);
        return period(query.text("site"), from.orElse(end.minus(USUAL)), end);
    }

    /** @throws Problem 422 when it is longer than 400 days, or ends before it begins */
    static Asked period(Optional<String> site, Instant from, Instant to) {
        List<Fault> faults = faults(from, to);
        if (!faults.isEmpty()) {
            throw Problem.invalid(faults);
        }
        return new Asked(Optional.empty(), site, from, to);
    }

    private static List<Fault> faults(Instant from, Instant to) {
        var faults = new ArrayList<Fault>();
        if (!from.isBefore(to)) {
            faults.add(Fault.inQuery("from", "must be before to"));
        } else if (Duration.between(from, to).compareTo(LONGEST) > 0) {
            faults.add(Fault.inQuery("from", "must be at most 400 days before to"));
        }
        return faults;
    }
}
