package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** The packaged gateway, started as docs/operating.md says but with less heap than that, has more to do than it holds. */
class OutOfMemoryIT {

    private static final int BOXES = 3;

    /** Enough to be started, and to take what boxes post; not for two large setups beside it. */
    private static final int MEGABYTES = 80;

    private static final int SETUPS = 3;

    /** A setup of 1 MB, which takes some thirty for a moment. */
    private static final int SITES = 13_800;

    @TempDir
    private Path home;

    @Test
    void the_process_ends_at_once_says_why_and_loses_nothing_that_was_answered() throws Exception {
        Set<String> answered = ConcurrentHashMap.newKeySet();
        String key;
        try (JarGateway gateway = JarGateway.ready(MEGABYTES, home, "--yardlight.allowance.burst=1000000")) {
            Web web = gateway.web();
            web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
            key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                    .get("key")
                    .asString();
            ExecutorService crowd = Executors.newFixedThreadPool(BOXES + SETUPS);
            for (int i = 0; i < BOXES; i++) {
                String box = "box-" + i + "-";
                crowd.execute(() -> post(web, key, box, answered));
            }
            await().until(() -> !answered.isEmpty());
            String large = large();
            for (int i = 0; i < SETUPS; i++) {
                crowd.execute(
                        () -> untilItEnds(() -> web.put("/api/v1/setup", "application/json", large, Web.owner())));
            }

            assertThat(gateway.exitCode()).isEqualTo(3);
            assertThat(gateway.said()).contains("Terminating due to java.lang.OutOfMemoryError");
            crowd.shutdown();
            assertThat(crowd.awaitTermination(30, TimeUnit.SECONDS)).isTrue();
        }
        try (JarGateway again = JarGateway.ready(home, "--yardlight.allowance.burst=1000000")) {
            assertThat(answered)
                    .allSatisfy(
                            id -> assertThat(event(again.web(), key, id).body()).contains("\"outcome\":\"duplicate\""));
        }
    }

    private static void post(Web web, String key, String box, Set<String> answered) {
        var number = new int[1];
        untilItEnds(() -> {
            String id = box + number[0]++;
            HttpResponse<String> answer = event(web, key, id);
            if (answer.statusCode() == 202) {
                answered.add(id);
            }
        });
    }

    private static void untilItEnds(Runnable asking) {
        try {
            while (true) {
                asking.run();
            }
        } catch (IllegalStateException nobodyIsThereAnyMore) {
            // The process has ended.
        }
    }

    private static HttpResponse<String> event(Web web, String key, String id) {
        return web.post(
                "/api/v1/events",
                "application/json",
                "{\"id\": \"" + id + "\", \"point\": \"tank\", \"condition\": \"high\", \"state\": \"active\"}",
                "Authorization",
                "Bearer " + key);
    }

    /** As long as a setup may be with this heap, and right but for its ladder, so that none of it is stored. */
    private static String large() {
        return IntStream.range(0, SITES)
                .mapToObj(site -> "{\"id\":\"s" + site + "\",\"name\":\"Site " + site
                        + "\",\"zone\":\"America/Denver\",\"ladder\":\"n\"}")
                .collect(Collectors.joining(",", "{\"sites\":[", "]}"));
    }
}
