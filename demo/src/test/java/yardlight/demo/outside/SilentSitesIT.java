package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Six boxes at the packaged gateway, over HTTP: one tells with its last words that its power is off, three share a link and
 * vanish together, one vanishes and nobody knows why, one stays.
 */
class SilentSitesIT {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private static final List<String> BOXES =
            List.of("loma-4-box", "mesa-9-box", "pico-2-box", "rio-7-box", "alto-1-box", "tule-5-box");

    private static final String SETUP = """
            sites:
              - {id: loma-4, zone: America/Chicago, ladder: night}
              - {id: mesa-9, zone: America/Chicago, ladder: night}
              - {id: pico-2, zone: America/Chicago, ladder: night}
              - {id: rio-7, zone: America/Chicago, ladder: night}
              - {id: alto-1, zone: America/Chicago, ladder: night}
              - {id: tule-5, zone: America/Chicago, ladder: night}
            boxes:
              - {id: loma-4-box, site: loma-4, feed: wells, heartbeat: {every: PT1S, grace: PT2S}}
              - {id: mesa-9-box, site: mesa-9, feed: mesa mains, link: hub, heartbeat: {every: PT1S, grace: PT2S}}
              - {id: pico-2-box, site: pico-2, feed: pico mains, link: hub, heartbeat: {every: PT1S, grace: PT2S}}
              - {id: rio-7-box, site: rio-7, feed: rio mains, link: hub, heartbeat: {every: PT1S, grace: PT2S}}
              - {id: alto-1-box, site: alto-1, heartbeat: {every: PT1S, grace: PT2S}}
              - {id: tule-5-box, site: tule-5, heartbeat: {every: PT1S, grace: PT2S}}
            contacts:
              - {id: ana, zone: America/Chicago, lines: [{channel: mail, address: ana@owner.example}]}
            ladders:
              - {id: night, rungs: [{call: [ana], wait: PT30M}]}
            """;

    @TempDir
    private Path home;

    private final Inbox inbox = Inbox.quick();
    private Node node;

    @AfterEach
    void stop() {
        node.close();
        inbox.close();
    }

    @Test
    void each_silence_is_read_for_what_it_is_and_corrected_when_the_box_is_back() throws Exception {
        node = new Node(home, Store.H2.anew(), inbox);
        node.start();
        node.awaitReady();
        node.owner().putSetup(SETUP);
        Map<String, String> keys = BOXES.stream()
                .collect(Collectors.toMap(box -> box, box -> node.owner().newKey(box)));
        try (var boxes = new SilentBoxes(node.port(), keys)) {
            await().during(Duration.ofSeconds(4)).atMost(PATIENCE).until(() -> alarms().isEmpty());

            boxes.gasp("loma-4-box", "{\"wells\":false}");
            boxes.silence("mesa-9-box", "pico-2-box", "rio-7-box", "alto-1-box");

            await().atMost(PATIENCE).until(() -> verdicts().size() == 3 && boxesOnHub() == 3);
            assertThat(verdicts())
                    .containsEntry("loma-4 box", "power-off suppressed-by-design")
                    .containsEntry("alto-1 box", "silent unacknowledged");
            assertThat(verdicts().values())
                    .filteredOn("comms-loss unacknowledged"::equals)
                    .hasSize(1);
            // The power at Loma 4, the link, and the box alone: one text each.
            await().atMost(PATIENCE).until(() -> inbox.texts("ana@owner.example") >= 3);
            await().during(Duration.ofSeconds(4)).atMost(PATIENCE).until(() -> inbox.texts("ana@owner.example") == 3);
            assertThat(texts()).anyMatch(text -> text.startsWith("COMMS LOST: 3 sites on hub link since "));

            boxes.startAnew("alto-1-box");

            await().atMost(PATIENCE)
                    .until(() -> silence("alto-1").path("verdict").asString().equals("power-off"));
            assertThat(silence("alto-1").path("told").asString()).isEqualTo("silent");
            assertThat(silence("alto-1").path("endedAt").asString()).isNotEmpty();
        }
    }

    /** What each silence is taken for and how its alarm stands, by site and point. */
    private Map<String, String> verdicts() throws IOException, InterruptedException {
        return alarms().stream()
                .filter(alarm -> alarm.has("silence"))
                .collect(Collectors.toMap(
                        alarm -> alarm.path("site").asString() + " "
                                + alarm.path("point").asString(),
                        alarm -> alarm.path("condition").asString() + " "
                                + alarm.path("state").asString()));
    }

    private JsonNode silence(String site) throws IOException, InterruptedException {
        return alarms().stream()
                .filter(alarm -> alarm.path("site").asString().equals(site))
                .map(alarm -> alarm.path("silence"))
                .findFirst()
                .orElseThrow();
    }

    private long boxesOnHub() throws IOException, InterruptedException {
        return alarms().stream()
                .filter(alarm -> alarm.path("point").asString().equals("link-hub"))
                .flatMap(alarm -> alarm.path("silence").path("boxes").valueStream())
                .count();
    }

    private List<String> texts() throws IOException, InterruptedException {
        return alarms().stream()
                .flatMap(alarm -> alarm.path("callout").path("notices").valueStream())
                .map(notice -> notice.path("text").asString())
                .toList();
    }

    private List<JsonNode> alarms() throws IOException, InterruptedException {
        Stream<JsonNode> all = Http.get(node.port(), "/api/v1/alarms").valueStream();
        return all.toList();
    }
}
