package yardlight.demo.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The machine of the database loses its power, or something on the way forgets the connections: nobody says that they are gone. The
 * gateway waits for an answer no longer than it was told to (socketTimeout, pgJDBC's documentation, "Connection parameters"),
 * four seconds here.
 */
class DatabaseVanishesIT {

    private static final String WAIT = "spring.datasource.hikari.data-source-properties.socketTimeout";
    private static final int PLACES = 2;

    @TempDir
    private Path home;

    private final Inbox inbox = Inbox.quick();
    private Wire wire;
    private Node node;
    private String key;

    @BeforeEach
    void prepare() throws Exception {
        Map<String, String> store = new HashMap<>(Store.POSTGRESQL.anew());
        wire = new Wire(Store.port());
        String direct = "localhost:" + Store.port();
        store.computeIfPresent("spring.datasource.url", (name, url) -> url.replace(direct, "127.0.0.1:" + wire.port()));
        store.put(WAIT, "4");
        node = new Node(home, store, inbox);
        node.start();
        node.awaitReady();
        node.owner().putSetup(new Places(PLACES, Duration.ofMinutes(15)).document());
        key = node.owner().newKey(Places.box(0));
    }

    @AfterEach
    void stop() throws Exception {
        wire.close();
        node.close();
        inbox.close();
    }

    @Test
    void whoever_comes_meanwhile_is_told_to_come_again_and_it_goes_on_by_itself() throws Exception {
        assertThat(event("first")).isEqualTo(202);
        await().atMost(Duration.ofSeconds(30)).until(() -> inbox.texts(Places.first(0)) == 1);

        wire.vanish();

        assertThat(event("second")).isEqualTo(503);
        HttpResponse<String> page = Http.ask(node.port(), "/api/v1/alarms");
        assertThat(page.statusCode()).as(page.body()).isEqualTo(503);
        assertThat(page.headers().firstValue("Retry-After")).isPresent();

        wire.comeBack();

        await().atMost(Duration.ofSeconds(40)).until(() -> event("second") == 202);
        await().atMost(Duration.ofSeconds(30)).until(() -> inbox.texts(Places.first(0)) == 2);
    }

    private int event(String id) throws Exception {
        return Http.event(
                node.port(),
                key,
                "{\"id\":\"" + id + "\",\"point\":\"" + id + "\",\"condition\":\"high\",\"state\":\"active\"}");
    }
}
