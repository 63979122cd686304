package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Optional;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Tongue;

/**
 * A site and months, as they were typed on the page, with what is wrong about them.
 *
 * @param wrongFrom empty when nothing is, as the other
 */
record MonthForm(String site, String from, String to, Months months, String wrongFrom, String wrongTo) {

    /** Without months this one. */
    static MonthForm of(HttpServletRequest request, Setup setup, Instant now, Tongue tongue) {
        Optional<String> site = Optional.of(typed(request, "site")).filter(id -> !id.isEmpty());
        ZoneId zone = Months.zone(site, setup);
        YearMonth current = YearMonth.from(now.atZone(zone));
        String from = typed(request, "from");
        String to = typed(request, "to");
        Optional<YearMonth> last = to.isEmpty() ? Optional.of(current) : Months.month(to);
        Optional<YearMonth> first = from.isEmpty() ? last : Months.month(from);
        var months = new Months(site, first.orElse(current), last.orElse(current), zone);
        String wrongFrom = first.isEmpty() && !from.isEmpty() ? tongue.say("reports.wrong.month") : "";
        String wrongTo = last.isEmpty() ? tongue.say("reports.wrong.month") : "";
        if (first.isPresent() && last.isPresent()) {
            wrongTo = months.from().isAfter(months.to())
                    ? tongue.say("reports.wrong.months-order")
                    : months.from().plusMonths(Months.MOST - 1).isBefore(months.to())
                            ? tongue.say("reports.wrong.months-many")
                            : "";
        }
        return new MonthForm(
                site.orElse(""),
                from.isEmpty() ? months.from().toString() : from,
                to.isEmpty() ? current.toString() : to,
                months,
                wrongFrom,
                wrongTo);
    }

    public boolean good() {
        return wrongFrom.isEmpty() && wrongTo.isEmpty();
    }

    private static String typed(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getParameter(name)).orElse("").strip();
    }
}
