package yardlight.demo.bench;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A setup as large as one likes. Each site has a ladder and a contact of its own, so that nobody's limit of texts and no
 * flood gets into a measurement.
 *
 * @param sites how many
 * @param boxes dealt out to the sites in turn
 * @param heartbeat what each box has after its site, empty or beginning with a comma; here and in rungs an apostrophe is a quotation mark
 * @param rungs the rungs of the ladder of a site
 * @param points how many each site has that are set up, {@code point-0} and so on
 * @param rules what each of them has after its site
 */
record BenchSetup(int sites, int boxes, String heartbeat, IntFunction<String> rungs, int points, String rules) {

    BenchSetup(int sites, int boxes, String heartbeat, IntFunction<String> rungs) {
        this(sites, boxes, heartbeat, rungs, 0, "");
    }

    /** The same with points at each site. */
    BenchSetup with(int more, String their) {
        return new BenchSetup(sites, boxes, heartbeat, rungs, more, their);
    }

    /** A box at each site, and nobody is called again while it is measured. */
    static BenchSetup of(int sites) {
        return new BenchSetup(sites, sites, "", site -> rung(site, "PT2H"));
    }

    /** One rung that calls the contact of a site. */
    static String rung(int site, String wait) {
        return "{'call': ['contact-" + site + "'], 'wait': '" + wait + "'}";
    }

    static String box(int number) {
        return "box-" + number;
    }

    /** The address at the carrier of the contact of a site. */
    static String address(int site) {
        return "5755550100-" + site + "@txt.example";
    }

    /** The document as JSON, which is read several times faster than YAML. */
    String document() {
        String document = "{'sites': "
                + each(
                        sites,
                        "{'id': 'site-%1$d', 'name': 'Site %1$d', 'zone': 'America/Chicago', 'ladder': 'ladder-%1$d'}"
                                ::formatted)
                + ", 'boxes': "
                + each(boxes, box -> "{'id': '" + box(box) + "', 'site': 'site-" + box % sites + "'" + heartbeat + "}")
                + ", 'points': "
                + each(
                        sites * points,
                        point -> "{'id': 'point-" + point % points + "', 'site': 'site-" + point / points + "', "
                                + rules + "}")
                + ", 'contacts': "
                + each(
                        sites,
                        site -> "{'id': 'contact-" + site + "', 'zone': 'America/Chicago', "
                                + "'lines': [{'channel': 'sms-mail', 'address': '" + address(site) + "'}]}")
                + ", 'ladders': "
                + each(sites, site -> "{'id': 'ladder-" + site + "', 'rungs': [" + rungs.apply(site) + "]}")
                + "}";
        return document.replace('\'', '"');
    }

    private static String each(int count, IntFunction<String> line) {
        return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining(",\n", "[", "]"));
    }
}
