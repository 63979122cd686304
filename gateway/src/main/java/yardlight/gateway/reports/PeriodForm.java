package yardlight.gateway.reports;

import jakarta.servlet.http.HttpServletRequest;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.web.util.UriComponentsBuilder;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Tongue;

/**
 * A site and days, as they were typed on the page, with what is wrong about them.
 *
 * @param zone whose days they are: the site's, or the first site's
 * @param query the end of the address of its report; empty while something is wrong
 */
record PeriodForm(String site, String from, String to, String zone, String wrongFrom, String wrongTo, String query) {

    private static final int USUAL = 30;

    /** Without days the last 30. */
    static PeriodForm of(HttpServletRequest request, Setup setup, Instant now, Tongue tongue) {
        String site = typed(request, "site");
        ZoneId zone = setup.site(site)
                .or(() -> setup.sites().values().stream().findFirst())
                .map(Site::zone)
                .orElse(ZoneOffset.UTC);
        LocalDate today = LocalDate.ofInstant(now, zone);
        String from = typed(request, "from");
        String to = typed(request, "to");
        return of(
                site,
                from.isEmpty() ? today.minusDays(USUAL - 1).toString() : from,
                to.isEmpty() ? today.toString() : to,
                zone,
                tongue);
    }

    private static PeriodForm of(String site, String from, String to, ZoneId zone, Tongue tongue) {
        Optional<LocalDate> first = day(from);
        Optional<LocalDate> last = day(to);
        String wrongFrom = first.isPresent() ? "" : tongue.say("reports.wrong.day");
        String wrongTo = last.isPresent() ? "" : tongue.say("reports.wrong.day");
        if (first.isPresent() && last.isPresent()) {
            boolean before = last.get().isBefore(first.get());
            boolean longer = last.get().isAfter(first.get().plusDays(Asked.LONGEST.toDays() - 1));
            wrongTo = before ? tongue.say("reports.wrong.order") : longer ? tongue.say("reports.wrong.long") : "";
        }
        boolean good = wrongFrom.isEmpty() && wrongTo.isEmpty();
        return new PeriodForm(
                site,
                from,
                to,
                zone.getId(),
                wrongFrom,
                wrongTo,
                good
                        ? query(
                                site,
                                first.get().atStartOfDay(zone).toInstant(),
                                last.get().plusDays(1).atStartOfDay(zone).toInstant())
                        : "");
    }

    private static String query(String site, Instant from, Instant to) {
        return UriComponentsBuilder.newInstance()
                .queryParamIfPresent("site", Optional.of(site).filter(id -> !id.isEmpty()))
                // 400 days with the hour of an autumn in them are longer than 400 times 24 hours.
                .queryParam("from", to.minus(Asked.LONGEST).isAfter(from) ? to.minus(Asked.LONGEST) : from)
                .queryParam("to", to)
                .encode()
                .build()
                .toUriString();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static String typed(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getParameter(name)).orElse("").strip();
    }
}
