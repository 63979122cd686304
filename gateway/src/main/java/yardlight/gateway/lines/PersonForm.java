package yardlight.gateway.lines;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yardlight.gateway.document.Node;
import yardlight.gateway.edit.Filled;
import yardlight.gateway.edit.Filling;
import yardlight.gateway.edit.Part;
import yardlight.gateway.edit.Piece;
import yardlight.gateway.edit.Sent;

/**
 * A contact as a form holds it, with whatever was typed.
 *
 * @param seen version of the setup that was looked at
 * @param id empty for a new one until it has a name
 * @param wellAt when they are told that all is well; empty when they are not
 * @param wellDays on which days; all or none of them is every day
 */
record PersonForm(
        int seen,
        String id,
        String name,
        String language,
        String zone,
        String textsPerHour,
        List<Way> lines,
        List<Hours> quiet,
        String wellAt,
        Set<String> wellDays) {

    static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    /** A form with more rows than this is none of ours. */
    private static final int MOST_ROWS = 50;

    private static final String DAY_LIST = "days";

    /** One line. */
    record Way(String channel, String address) {

        private Node.Members node() {
            return Filling.of(Optional.empty())
                    .text("channel", channel)
                    .text("address", address)
                    .done();
        }
    }

    /** One stretch of quiet hours. */
    record Hours(String from, String to, String lets, Set<String> days) {

        private Node.Members node() {
            return Filling.of(Optional.empty())
                    .text("from", from)
                    .text("to", to)
                    .text("lets", lets)
                    .node(DAY_LIST, some(days))
                    .done();
        }
    }

    static PersonForm blank(int seen) {
        return new PersonForm(seen, "", "", "en", "", "", List.of(new Way("", "")), List.of(), "", Set.copyOf(DAYS));
    }

    /** With all that was typed, for somebody new. */
    PersonForm anew(int version) {
        return new PersonForm(version, "", name, language, zone, textsPerHour, lines, quiet, wellAt, wellDays);
    }

    static PersonForm of(int seen, Piece piece) {
        Filled filled = Filled.of(piece);
        Optional<Filled> well = filled.one("allsWell");
        return new PersonForm(
                seen,
                piece.key(),
                filled.text("name"),
                filled.has("language") ? filled.text("language") : "en",
                filled.text("zone"),
                filled.text("textsPerHour"),
                filled.each("lines").stream()
                        .map(line -> new Way(line.text("channel"), line.text("address")))
                        .toList(),
                filled.each("quiet").stream().map(PersonForm::hours).toList(),
                well.map(one -> one.text("at")).orElse(""),
                well.map(PersonForm::days).orElse(Set.copyOf(DAYS)));
    }

    private static Hours hours(Filled filled) {
        return new Hours(
                filled.text("from"),
                filled.text("to"),
                filled.has("lets") ? filled.text("lets") : "high",
                days(filled));
    }

    private static Set<String> days(Filled filled) {
        return filled.has(DAY_LIST) ? Set.copyOf(new HashSet<>(filled.texts(DAY_LIST))) : Set.copyOf(DAYS);
    }

    /** As a browser sent it. */
    static PersonForm of(String id, Map<String, String[]> sent) {
        return new PersonForm(
                Sent.number(sent, "seen"),
                id,
                Sent.text(sent, "name"),
                Sent.text(sent, "language"),
                Sent.text(sent, "zone"),
                Sent.text(sent, "textsPerHour"),
                rows(sent, "lines")
                        .mapToObj(i -> new Way(
                                Sent.text(sent, "lines." + i + ".channel"), Sent.text(sent, "lines." + i + ".address")))
                        .toList(),
                rows(sent, "quiet")
                        .mapToObj(i -> new Hours(
                                Sent.text(sent, "quiet." + i + ".from"),
                                Sent.text(sent, "quiet." + i + ".to"),
                                Sent.text(sent, "quiet." + i + ".lets"),
                                Sent.texts(sent, "quiet." + i + ".days")))
                        .toList(),
                Sent.text(sent, "wellAt"),
                Sent.texts(sent, "wellDays"));
    }

    private static IntStream rows(Map<String, String[]> sent, String name) {
        return IntStream.range(0, Math.min(MOST_ROWS, Sent.number(sent, name)));
    }

    /** With a row more, less or elsewhere: {@code line-add}, {@code line-drop-1}, {@code line-up-1}, {@code quiet-add}. */
    PersonForm after(String step) {
        int place = step.matches(".*-\\d{1,2}") ? Integer.parseInt(step.replaceAll(".*-", "")) : -1;
        var ways = new ArrayList<>(lines);
        var hours = new ArrayList<>(quiet);
        switch (step.replaceAll("-\\d{1,2}$", "")) {
            case "line-add" -> ways.add(new Way("", ""));
            case "line-drop" -> Sent.drop(ways, place);
            case "line-up" -> Sent.up(ways, place);
            case "quiet-add" -> hours.add(new Hours("21:00", "06:00", "high", Set.copyOf(DAYS)));
            case "quiet-drop" -> Sent.drop(hours, place);
            default -> {
                // A button that is not ours changes nothing.
            }
        }
        return new PersonForm(
                seen, id, name, language, zone, textsPerHour, List.copyOf(ways), List.copyOf(hours), wellAt, wellDays);
    }

    PersonForm seeing(int version) {
        return new PersonForm(version, id, name, language, zone, textsPerHour, lines, quiet, wellAt, wellDays);
    }

    /** What the setup is to hold. What the form does not show stays as it was. */
    Piece piece(String key, Piece before) {
        Optional<Node> well = wellAt.isBlank()
                ? Optional.empty()
                : Optional.of(Filling.of(Optional.empty())
                        .text("at", wellAt)
                        .node(DAY_LIST, some(wellDays))
                        .done());
        return Piece.of(
                Part.CONTACTS,
                Filling.of(before.node())
                        .text("id", key)
                        .text("name", name)
                        .text("zone", zone)
                        .text("language", language)
                        .each("lines", lines.stream().map(Way::node).toList(), true)
                        .each("quiet", quiet.stream().map(Hours::node).toList(), false)
                        .whole("textsPerHour", textsPerHour)
                        .node("allsWell", well)
                        .done());
    }

    /** All days need not be said; no day at all is a mistake that the setup finds. */
    private static Optional<Node> some(Set<String> days) {
        return days.containsAll(DAYS)
                ? Optional.empty()
                : Optional.of(new Node.Items(DAYS.stream()
                        .filter(days::contains)
                        .map(day -> (Node) new Node.Text(day))
                        .toList()));
    }
}
