package yardlight.gateway.record;

import jakarta.servlet.http.HttpServletRequest;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.web.util.UriComponentsBuilder;
import yardlight.db.log.LogFilter;
import yardlight.escalation.Entry;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/**
 * Which lines somebody asked for, as they typed it. Times are those of the site that they chose, or of the first one.
 *
 * @param before the line before which the page begins; empty for the newest
 */
record Asked(String site, String contact, String what, String from, String to, Optional<Long> before) {

    static Asked of(HttpServletRequest request) {
        return new Asked(
                typed(request, "site"),
                typed(request, "contact"),
                typed(request, "what"),
                typed(request, "from"),
                typed(request, "to"),
                Optional.of(typed(request, "before"))
                        .filter(text -> text.matches("\\d{1,18}"))
                        .map(Long::parseLong));
    }

    private static String typed(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getParameter(name)).orElse("").strip();
    }

    /** What can be understood of it; the rest is left out. */
    LogFilter filter(ZoneId zone) {
        return new LogFilter(
                instant(from, zone),
                instant(to, zone),
                some(site),
                some(contact),
                Stream.of(Entry.What.values())
                        .map(Entry.What::word)
                        .filter(what::equals)
                        .findFirst());
    }

    /** The zone of its times. */
    ZoneId zone(Setup setup) {
        return setup.site(site)
                .or(() -> setup.sites().values().stream().findFirst())
                .map(Site::zone)
                .orElse(ZoneOffset.UTC);
    }

    public boolean wrongFrom() {
        return !from.isEmpty() && instant(from, ZoneOffset.UTC).isEmpty();
    }

    public boolean wrongTo() {
        return !to.isEmpty() && instant(to, ZoneOffset.UTC).isEmpty();
    }

    /** The same, as the end of an address. */
    public String query(Optional<Long> line) {
        UriComponentsBuilder address = UriComponentsBuilder.newInstance()
                .queryParamIfPresent("site", some(site))
                .queryParamIfPresent("contact", some(contact))
                .queryParamIfPresent("what", some(what))
                .queryParamIfPresent("from", some(from))
                .queryParamIfPresent("to", some(to))
                .queryParamIfPresent("before", line);
        return address.encode().build().toUriString();
    }

    private static Optional<String> some(String text) {
        return Optional.of(text).filter(one -> !one.isEmpty());
    }

    /** As a browser writes a local time, to the minute or finer. */
    private static Optional<Instant> instant(String text, ZoneId zone) {
        try {
            return some(text)
                    .map(LocalDateTime::parse)
                    .map(local -> local.atZone(zone).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
