package yardlight.demo.bench;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A setup with as many sites as one likes, each with its own box, ladder and contact, so that nobody's limit of texts
 * and no flood gets into the measurement.
 */
record BenchSetup(int sites) {

    static String box(int site) {
        return "box-" + site;
    }

    /** The address at the carrier of the contact of a site. */
    static String address(int site) {
        return "5755550100-" + site + "@txt.example";
    }

    /** The document as YAML. */
    String document() {
        return "sites:\n" + each("- {id: site-%1$d, name: Site %1$d, zone: America/Chicago, ladder: ladder-%1$d}")
                + "boxes:\n" + each("- {id: box-%1$d, site: site-%1$d}")
                + "points: []\n"
                + "contacts:\n"
                + each("- {id: contact-%1$d, name: Contact %1$d, zone: America/Chicago, language: en, "
                        + "lines: [{channel: sms-mail, address: 5755550100-%1$d@txt.example}], textsPerHour: 20}")
                + "rosters: []\n"
                + "ladders:\n"
                + each("- {id: ladder-%1$d, endsWhen: acknowledged, "
                        + "rungs: [{call: [contact-%1$d], wait: PT15M}], again: 0}");
    }

    private String each(String line) {
        return IntStream.range(0, sites)
                .mapToObj(site -> "  " + String.format(line, site) + "\n")
                .collect(Collectors.joining());
    }
}
