package yardlight.gateway.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The pages over a slow mobile link, by a browser that has nothing of them yet: 1.6 Mbit/s and 150 ms, which Chromium's
 * developer tools impose on each request. What a phone's own processor adds is not in it.
 */
class SlowLinkIT extends SharedGateway {

    private static final int BYTES_PER_SECOND = 1_600_000 / 8;
    private static final int LATENCY_MILLIS = 150;
    private static final int MOST_MILLIS = 1_500;
    private static final int MOST_BYTES = 100_000;
    private static final int TRIES = 3;
    private static final List<String> PAGES = List.of(
            "/",
            "/sites",
            "/sites/mesa-9",
            "/sites/mesa-9/curves",
            "/sites/mesa-9/coverage",
            "/sites/mesa-9/points/water-tank",
            "/sites/mesa-9/shut-in",
            "/sites/mesa-9/shut-in/terms",
            "/people",
            "/people/ana",
            "/people/ana/vacations",
            "/people/ana/calendar",
            "/turns",
            "/turns/crew/edit",
            "/ladders",
            "/ladders/night",
            "/boxes",
            "/boxes/mesa-9-box",
            "/record",
            "/paths",
            "/edits",
            "/reports",
            "/reports/performance",
            "/reports/burden",
            "/silences",
            "/logins",
            "/me");

    @Test
    void shows_each_page_within_a_second_and_a_half_and_in_less_than_100_kB() {
        var tooMuch = new ArrayList<String>();
        try (var visit = Visit.to(port, Look.PHONE_BY_DAY).signIn("owner")) {
            CDPSession tools = visit.page().context().newCDPSession(visit.page());
            slow(tools);
            for (String path : PAGES) {
                Measured measured = measure(visit, tools, path);
                System.out.printf(
                        "%s: first paint after %.0f ms (limit %d), %.0f bytes (limit %d)%n",
                        path, measured.paint(), MOST_MILLIS, measured.bytes(), MOST_BYTES);
                if (measured.paint() >= MOST_MILLIS || measured.bytes() >= MOST_BYTES) {
                    tooMuch.add(path + ": " + measured);
                }
            }
        }

        assertThat(tooMuch).isEmpty();
    }

    /** Milliseconds to the first paint, the median of a few, and what came over the link. */
    private record Measured(double paint, double bytes) {}

    private static Measured measure(Visit visit, CDPSession tools, String path) {
        var paints = new double[TRIES];
        double bytes = 0;
        for (int i = 0; i < TRIES; i++) {
            tools.send("Network.clearBrowserCache");
            Page page = visit.open(path);
            // Playwright's own waiting compiles its text in the page, which the page forbids.
            await().pollInSameThread()
                    .until(() -> number(page, "performance.getEntriesByName('first-contentful-paint').length") > 0);
            paints[i] = number(page, "performance.getEntriesByName('first-contentful-paint')[0].startTime");
            bytes = number(
                    page,
                    "[...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]"
                            + ".reduce((sum, one) => sum + one.transferSize, 0)");
        }
        Arrays.sort(paints);
        return new Measured(paints[TRIES / 2], bytes);
    }

    private static void slow(CDPSession tools) {
        tools.send("Network.enable");
        var conditions = new JsonObject();
        conditions.addProperty("offline", false);
        conditions.addProperty("latency", LATENCY_MILLIS);
        conditions.addProperty("downloadThroughput", BYTES_PER_SECOND);
        conditions.addProperty("uploadThroughput", BYTES_PER_SECOND);
        tools.send("Network.emulateNetworkConditions", conditions);
    }

    private static double number(Page page, String expression) {
        return ((Number) page.evaluate(expression)).doubleValue();
    }
}
