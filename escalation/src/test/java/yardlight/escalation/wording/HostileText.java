package yardlight.escalation.wording;

import java.util.Random;

/** Names as nobody would give them: any script, any length, with everything in them that breaks a text. */
final class HostileText {

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

    private HostileText() {}

    static String any(Random random, int bits) {
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
}
