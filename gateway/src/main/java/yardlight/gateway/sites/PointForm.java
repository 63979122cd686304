package yardlight.gateway.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardlight.gateway.document.Node;
import yardlight.gateway.page.Tongue;

/**
 * The form that sets up a point, as it stands in the setup or as somebody typed it.
 *
 * @param seen the version of the setup that was looked at
 * @param priority its word; empty for as the box says
 */
record PointForm(int seen, String name, String unit, String priority, Span onDelay, Span offDelay, boolean latching) {

    /**
     * A span of time as somebody types it.
     *
     * @param unit {@code S}, {@code M} or {@code H}, as in ISO 8601
     */
    record Span(String count, String unit) {

        private static final int MOST_DIGITS = 5;

        static Span of(String duration) {
            try {
                Duration span = duration.isEmpty() ? Duration.ZERO : Duration.parse(duration);
                if (span.isZero()) {
                    return new Span("", "M");
                }
                if (span.toSeconds() % 60 != 0) {
                    return new Span(Long.toString(span.toSeconds()), "S");
                }
                return span.toMinutes() % 60 == 0
                        ? new Span(Long.toString(span.toHours()), "H")
                        : new Span(Long.toString(span.toMinutes()), "M");
            } catch (DateTimeParseException e) {
                return new Span("", "M");
            }
        }

        boolean good() {
            return count.isBlank() || count.strip().matches("\\d{1," + MOST_DIGITS + "}") && unit.matches("[SMH]");
        }

        /** As the setup has it; nothing for none. */
        Optional<Node> node() {
            return count.isBlank() ? Optional.empty() : Optional.of(new Node.Text("PT" + count.strip() + unit));
        }
    }

    static PointForm of(Node.Members node, int seen) {
        return new PointForm(
                seen,
                Trees.text(node, "name"),
                Trees.text(node, "unit"),
                Trees.text(node, "priority"),
                Span.of(Trees.text(node, "onDelay")),
                Span.of(Trees.text(node, "offDelay")),
                node.nodes().get("latching") instanceof Node.Flag flag && flag.value());
    }

    static PointForm typed(HttpServletRequest request) {
        return new PointForm(
                number(typed(request, "seen")),
                typed(request, "name"),
                typed(request, "unit"),
                typed(request, "priority"),
                new Span(typed(request, "onDelay"), typed(request, "onDelayUnit")),
                new Span(typed(request, "offDelay"), typed(request, "offDelayUnit")),
                typed(request, "latching").equals("true"));
    }

    private static String typed(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getParameter(name)).orElse("");
    }

    private static int number(String text) {
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    }

    PointForm seen(int version) {
        return new PointForm(version, name, unit, priority, onDelay, offDelay, latching);
    }

    /** What cannot even be put into a setup, by the field. */
    Map<String, String> mistakes(Tongue tongue) {
        var wrong = new TreeMap<String, String>();
        if (!onDelay.good()) {
            wrong.put("onDelay", tongue.say("sites.wrong.number"));
        }
        if (!offDelay.good()) {
            wrong.put("offDelay", tongue.say("sites.wrong.number"));
        }
        return wrong;
    }

    /** The point with what the form has; everything that the form does not show stays as it is. */
    Node.Members on(Node.Members point) {
        Node.Members node = Trees.withText(point, "name", name);
        node = Trees.withText(node, "unit", unit);
        node = Trees.withText(node, "priority", priority);
        node = Trees.with(node, "onDelay", onDelay.node());
        node = Trees.with(node, "offDelay", offDelay.node());
        return Trees.with(node, "latching", latching ? Optional.of(new Node.Flag(true)) : Optional.empty());
    }
}
