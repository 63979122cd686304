package yardlight.gateway.turns;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Filling;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Sent;

/**
 * A roster as a form holds it, with whatever was typed.
 *
 * @param seen version of the setup that was looked at
 * @param id empty for a new one
 * @param name of a new one, of which its id is made
 * @param count how many of the unit a turn is long
 * @param unit {@code weeks}, {@code days}, {@code hours} or {@code minutes}
 * @param order contacts, or {@code roster:} and another roster
 */
record RosterForm(
        int seen, String id, String name, String zone, String start, String count, String unit, List<String> order) {

    static final List<String> UNITS = List.of("weeks", "days", "hours", "minutes");

    private static final int MOST_ROWS = 100;
    private static final int WEEK = 7;

    static RosterForm blank(int seen, String start) {
        return new RosterForm(seen, "", "", "", start, "1", "weeks", List.of("", ""));
    }

    static RosterForm of(int seen, Piece piece) {
        Filled filled = Filled.of(piece);
        Duration tour = Duration.parse(filled.text("tour"));
        long days = tour.toDays();
        String unit = !tour.equals(Duration.ofDays(days))
                ? tour.equals(Duration.ofHours(tour.toHours())) ? "hours" : "minutes"
                : days % WEEK == 0 ? "weeks" : "days";
        long count = switch (unit) {
            case "weeks" -> days / WEEK;
            case "days" -> days;
            case "hours" -> tour.toHours();
            default -> tour.toMinutes();
        };
        return new RosterForm(
                seen,
                piece.key(),
                piece.key(),
                filled.text("zone"),
                filled.text("start"),
                Long.toString(count),
                unit,
                filled.texts("order"));
    }

    static RosterForm of(String id, Map<String, String[]> sent) {
        int rows = Math.min(MOST_ROWS, Sent.number(sent, "order"));
        return new RosterForm(
                Sent.number(sent, "seen"),
                id,
                Sent.text(sent, "name"),
                Sent.text(sent, "zone"),
                Sent.text(sent, "start"),
                Sent.text(sent, "count"),
                Sent.text(sent, "unit"),
                IntStream.range(0, rows)
                        .mapToObj(i -> Sent.text(sent, "order." + i))
                        .toList());
    }

    /** With a row more, less or elsewhere: {@code add}, {@code drop-1}, {@code up-1}. */
    RosterForm after(String step) {
        var rows = new ArrayList<>(order);
        int place = step.matches("(drop|up)-\\d{1,2}") ? Integer.parseInt(step.replaceAll(".*-", "")) : -1;
        if (step.equals("add")) {
            rows.add("");
        } else if (step.startsWith("drop")) {
            Sent.drop(rows, place);
        } else {
            Sent.up(rows, place);
        }
        return new RosterForm(seen, id, name, zone, start, count, unit, List.copyOf(rows));
    }

    RosterForm seeing(int version) {
        return new RosterForm(version, id, name, zone, start, count, unit, order);
    }

    /** What the setup is to hold; what the form does not show, the swaps, stays as it was. */
    Piece piece(String key, Piece before) {
        return Piece.of(
                Part.ROSTERS,
                Filling.of(before.node())
                        .text("id", key)
                        .text("zone", zone)
                        .text("start", start)
                        .text("tour", tour(Filled.of(before).text("tour")))
                        .texts(
                                "order",
                                order.stream().filter(one -> !one.isBlank()).toList())
                        .done());
    }

    /** As it was written before, if it is as long; what is no number is found wrong as it was typed. */
    private String tour(String before) {
        Optional<Duration> wanted = duration();
        Optional<Duration> was = before.isEmpty() ? Optional.empty() : Optional.of(Duration.parse(before));
        return wanted.isPresent() && wanted.equals(was)
                ? before
                : wanted.map(tour -> tour.equals(Duration.ofDays(tour.toDays()))
                                ? "P" + tour.toDays() + "D"
                                : tour.toString())
                        .orElse(count + " " + unit);
    }

    private Optional<Duration> duration() {
        if (!count.strip().matches("\\d{1,6}")) {
            return Optional.empty();
        }
        long number = Long.parseLong(count.strip());
        return switch (unit) {
            case "weeks" -> Optional.of(Duration.ofDays(number * WEEK));
            case "days" -> Optional.of(Duration.ofDays(number));
            case "hours" -> Optional.of(Duration.ofHours(number));
            case "minutes" -> Optional.of(Duration.ofMinutes(number));
            default -> Optional.empty();
        };
    }
}
