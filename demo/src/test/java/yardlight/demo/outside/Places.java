package yardlight.demo.outside;

import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A setup of so many places, each with a box and somebody of its own who is texted: so each text belongs to one alarm.
 *
 * @param patience until the second person of a place is called
 */
record Places(int count, Duration patience) {

    /** The address of who is called first. */
    static String first(int place) {
        return "5755550100-" + place + "@txt.example";
    }

    /** The address of who is called next. */
    static String second(int place) {
        return "5755550101-" + place + "@txt.example";
    }

    static String site(int place) {
        return "place-" + place;
    }

    static String box(int place) {
        return "box-" + place;
    }

    String document() {
        return "sites:\n"
                + each("- {id: place-%1$d, name: Place %1$d, zone: America/Chicago, ladder: ladder-%1$d}")
                + "boxes:\n" + each("- {id: box-%1$d, site: place-%1$d}")
                + "points: []\n"
                + "contacts:\n"
                + each("- {id: first-%1$d, name: First %1$d, zone: America/Chicago, language: en, "
                        + "lines: [{channel: sms-mail, address: 5755550100-%1$d@txt.example}]}")
                + each("- {id: second-%1$d, name: Second %1$d, zone: America/Chicago, language: en, "
                        + "lines: [{channel: sms-mail, address: 5755550101-%1$d@txt.example}]}")
                + "rosters: []\n"
                + "ladders:\n"
                + each("- {id: ladder-%1$d, endsWhen: acknowledged, rungs: [{call: [first-%1$d], wait: " + patience
                        + "}, {call: [second-%1$d], wait: PT15M}], again: 0}");
    }

    private String each(String line) {
        return IntStream.range(0, count)
                .mapToObj(place -> "  " + String.format(line, place) + "\n")
                .collect(Collectors.joining());
    }
}
