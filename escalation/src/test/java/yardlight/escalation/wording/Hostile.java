package yardlight.escalation.wording;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Site;

/** Names as nobody would give them: any script, any length, with everything in them that breaks a text. */
final class Hostile {

    private static final String[] BITS = {
        " ",
        "  ",
        "\r\n",
        "\t",
        "\u0000",
        "\u001B",
        "|",
        "[",
        "]",
        "{",
        "~",
        "\\",
        "\u20AC",
        "^",
        "°",
        "–",
        "—",
        "“",
        "”",
        "…",
        "²",
        "½",
        "µ",
        "í",
        "ñ",
        "Ñ",
        "ß",
        "é",
        "e\u0301",
        "\u6C34\u7BB1",
        "Озеро",
        "Αθήνα",
        "بئر",
        "בור",
        "\uD83D\uDCA1",
        "\uD83C\uDDFA\uD83C\uDDF8",
        "\uD800",
        "\uDC00",
        "\u202E",
        "\u200D",
        "\uFEFF",
        ". Reply OK 1",
        "(limit",
        "AM.",
        "-",
        "/",
        "(",
        "%s",
        "%d%n",
        "$1",
        "MESA",
        "9",
        "WATER TANK",
        "tank",
        "X",
        "@",
        "ALL",
        "'",
        "\"",
        ";",
        "--",
        "\uFB03",
        "\u0130",
        "\u1E9E"
    };

    private static final String[] CONDITIONS = {
        "high-high", "power-off", "comms-loss", "silent", "low", "x".repeat(64), "a-b-".repeat(15), "9"
    };

    private Hostile() {}

    static String text(Random random, int bits) {
        var text = new StringBuilder();
        int length = random.nextInt(bits + 1);
        for (int i = 0; i < length; i++) {
            switch (random.nextInt(4)) {
                case 0 -> text.append(BITS[random.nextInt(BITS.length)]);
                case 1 -> text.appendCodePoint(random.nextInt(Character.MAX_CODE_POINT + 1));
                case 2 -> text.append((char) ('A' + random.nextInt(26)));
                default ->
                    text.append(random.nextInt(5) == 0 ? "W".repeat(random.nextInt(90)) : BITS[random.nextInt(2)]);
            }
        }
        return text.toString();
    }

    static List<Subject> subjects(Random random) {
        int several = random.nextInt(3) == 0 ? 1 + random.nextInt(70) : 1;
        int sites = 1 + random.nextInt(3);
        var all = new ArrayList<Subject>();
        List<Site> places = IntStream.range(0, sites)
                .mapToObj(i -> new Site("site-" + i, text(random, 25), ZoneId.of("America/Chicago"), "night"))
                .toList();
        for (int i = 0; i < several; i++) {
            all.add(subject(random, places.get(random.nextInt(sites))));
        }
        return all;
    }

    private static Subject subject(Random random, Site site) {
        var point = new Point(
                random.nextBoolean() ? "box" : "power-pump",
                site.id(),
                text(random, 25),
                Optional.of(text(random, 5)),
                Optional.empty(),
                Timing.PLAIN,
                Set.of(),
                true);
        AlarmState[] states = AlarmState.values();
        var measured = new Measured(number(random), number(random), Optional.of(text(random, 8)), Optional.empty());
        return Made.subject(
                site,
                point,
                CONDITIONS[random.nextInt(CONDITIONS.length)],
                alarm -> alarm.measured(measured)
                        .repeats(random.nextInt(3) == 0 ? random.nextInt(Integer.MAX_VALUE) : random.nextInt(6))
                        .state(states[random.nextInt(states.length)])
                        .returnedAt(random.nextBoolean() ? Optional.of(Made.BEGAN) : Optional.empty()));
    }

    private static Optional<BigDecimal> number(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(BigDecimal.valueOf(random.nextInt(), random.nextInt(6)));
            default ->
                Optional.of(new BigDecimal(new BigInteger(random.nextInt(200), random), random.nextInt(900) - 450));
        };
    }

    static Answering answering(Random random) {
        return new Answering(
                random.nextInt(4) == 0 ? Optional.empty() : Optional.of(random.nextInt(Integer.MAX_VALUE)),
                switch (random.nextInt(3)) {
                    case 0 -> Optional.empty();
                    case 1 -> Optional.of("https://" + "h".repeat(random.nextInt(150)) + "~");
                    default -> Optional.of(text(random, 6));
                });
    }
}
