package yardlight.gateway.arrival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** The packaged gateway with the heap of a small machine, and many at its door at once. */
class CrowdIT {

    private static final String EVENTS = "/api/v1/events";
    private static final String EVENT = "{\"point\": \"tank\", \"condition\": \"high\", \"state\": \"active\"}";

    /** More than there are threads, and more than are waited for with this heap. */
    private static final int SLOW = 400;

    private static final int THREADS = 128;

    /** A slow one is read byte by byte, and this is all that is sent of it for a while. */
    private static final String BLANK = " ".repeat(20);

    /** Without a limit so many end a gateway with a heap of 128 MB. */
    private static final int BACKLOGS = 24;

    private static final int LINES = 1_000;

    /** In a field that is read and left alone: so a backlog is 1.5 MB long and yet quickly decided. */
    private static final String STUFFING = "x".repeat(1_400);

    @TempDir
    private static Path home;

    private static JarGateway gateway;
    private static Web web;
    private static String key;

    @BeforeAll
    static void start() {
        gateway = JarGateway.ready(home, "--yardlight.allowance.burst=1000000");
        web = gateway.web();
        web.put("/api/v1/setup", "application/yaml", Documents.CONTRACT, Web.owner());
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
    }

    @AfterAll
    static void stop() {
        gateway.close();
    }

    @Test
    void more_slow_senders_than_threads_keep_nobody_else_waiting() throws IOException {
        String body = BLANK + EVENT;
        var slow = new ArrayList<Sender>();
        try {
            for (int i = 0; i < SLOW; i++) {
                slow.add(
                        new Sender(web.port(), EVENTS, Sender.json() + Sender.key(key) + Sender.length(body.length())));
            }
            await().atMost(Duration.ofSeconds(20)).until(() -> answered(slow).size() >= SLOW / 4);

            for (int drop = 0; drop < BLANK.length(); drop++) {
                drip(slow);
                assertThat(event("while-they-drip-" + drop)).isEqualTo(202);
                assertThat(health("liveness")).isEqualTo(200);
                assertThat(health("readiness")).isEqualTo(200);
            }

            assertThat(answered(slow).get(0).status())
                    .as("one that took longest")
                    .isEqualTo(503);
            slow.removeAll(answered(slow));
            assertThat(slow).as("those that are still waited for").hasSizeGreaterThan(THREADS);
            slow.get(0).send(EVENT);
            assertThat(slow.get(0).status()).isEqualTo(202);
        } finally {
            for (Sender one : slow) {
                one.close();
            }
        }
    }

    private static void drip(List<Sender> slow) throws IOException {
        for (Sender one : slow) {
            if (!one.answered()) {
                one.send(" ");
            }
        }
    }

    private static List<Sender> answered(List<Sender> slow) throws IOException {
        var answered = new ArrayList<Sender>();
        for (Sender one : slow) {
            if (one.answered()) {
                answered.add(one);
            }
        }
        return answered;
    }

    @Test
    void backlogs_that_all_come_at_once_are_put_off_and_taken_one_after_the_other() throws Exception {
        Map<Integer, Integer> putOff = new ConcurrentHashMap<>();
        var boxes = Executors.newFixedThreadPool(BACKLOGS);
        for (int box = 0; box < BACKLOGS; box++) {
            int mine = box;
            boxes.execute(() -> untilTaken(backlog(mine), mine, putOff));
        }
        boxes.shutdown();

        assertThat(boxes.awaitTermination(3, TimeUnit.MINUTES)).isTrue();
        assertThat(putOff).as(gateway.said()).hasSize(BACKLOGS);
        assertThat(putOff.values()).as("how often each was put off").anyMatch(times -> times > 0);
        assertThat(event("after-the-backlogs")).isEqualTo(202);
    }

    /** Does as a box does: 503 means later. Leaves no count behind when it gets another answer than 202 in the end. */
    private static void untilTaken(String backlog, int box, Map<Integer, Integer> putOff) {
        int times = 0;
        HttpResponse<String> answer = lines(backlog);
        for (; answer.statusCode() == 503; answer = lines(backlog)) {
            assertThat(answer.headers().firstValue("Retry-After")).isPresent();
            times++;
        }
        if (answer.statusCode() == 202 && Web.json(answer).get("results").size() == LINES) {
            putOff.put(box, times);
        }
    }

    private static HttpResponse<String> lines(String body) {
        return web.post(EVENTS, "application/x-ndjson", body, "Authorization", "Bearer " + key);
    }

    private static String backlog(int box) {
        return IntStream.range(0, LINES)
                .mapToObj(line -> "{\"id\": \"" + box + "-" + line + "\", \"point\": \"tank-" + line % 50
                        + "\", \"condition\": \"high\", \"state\": \"" + (line % 2 == 0 ? "active" : "normal")
                        + "\", \"at\": \"2026-01-01T00:00:00Z\", \"stuffing\": \"" + STUFFING + "\"}")
                .collect(Collectors.joining("\n"));
    }

    private static int health(String which) {
        return inTime(() -> web.get("/actuator/health/" + which));
    }

    private static int event(String id) {
        return inTime(() -> web.post(
                EVENTS,
                "application/json",
                "{\"id\": \"" + id + "\", " + EVENT.substring(1),
                "Authorization",
                "Bearer " + key));
    }

    /** The status, if it comes while a load balancer or a box would still wait. */
    private static int inTime(Supplier<HttpResponse<String>> asking) {
        return CompletableFuture.supplyAsync(asking)
                .orTimeout(5, TimeUnit.SECONDS)
                .join()
                .statusCode();
    }
}
