package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import yardlight.escalation.performance.Span;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.document.Query;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;

/**
 * Which months somebody asks for, and of which site.
 *
 * @param to inclusive
 * @param zone in which they begin: the site's, or the first site's
 */
record Months(Optional<String> site, YearMonth from, YearMonth to, ZoneId zone) {

    /** Thirteen months are at most 397 days. */
    static final int MOST = 13;

    private static final String RULE = "must be a month such as 2026-11";

    /**
     * Reads {@code site}, {@code from} and {@code to}: without an end this month, without a beginning the end alone.
     *
     * @throws Problem 422 when they are more than thirteen, or end before they begin
     */
    static Months of(HttpServletRequest request, Setup setup, Instant now) {
        var query = new Query(request);
        Optional<String> site = query.text("site");
        Optional<YearMonth> from = query.as("from", RULE, Months::month);
        Optional<YearMonth> to = query.as("to", RULE, Months::month);
        query.orNothing();
        ZoneId zone = zone(site, setup);
        YearMonth last = to.orElseGet(() -> YearMonth.from(now.atZone(zone)));
        var months = new Months(site, from.orElse(last), last, zone);
        months.wrong().ifPresent(rule -> {
            throw Problem.invalid(Fault.inQuery("from", rule));
        });
        return months;
    }

    private Optional<String> wrong() {
        if (from.isAfter(to)) {
            return Optional.of("must not be after to");
        }
        return count() > MOST ? Optional.of("must be at most 12 months before to") : Optional.empty();
    }

    private long count() {
        return ChronoUnit.MONTHS.between(from, to) + 1;
    }

    static ZoneId zone(Optional<String> site, Setup setup) {
        return site.flatMap(setup::site)
                .or(() -> setup.sites().values().stream().findFirst())
                .map(Site::zone)
                .orElse(ZoneOffset.UTC);
    }

    static Optional<YearMonth> month(String text) {
        try {
            return Optional.of(YearMonth.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Oldest first. */
    List<YearMonth> all() {
        return LongStream.range(0, count()).mapToObj(from::plusMonths).toList();
    }

    /** A month from its first moment to its last. */
    Span span(YearMonth month) {
        return new Span(start(month), start(month.plusMonths(1)));
    }

    private Instant start(YearMonth month) {
        return month.atDay(1).atStartOfDay(zone).toInstant();
    }
}
