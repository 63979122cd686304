package yardlight.gateway.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.JarGateway;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;

/** Two packaged gateways, each of which is a box of the other. */
class EachOtherIT {

    private static final String SETUP = """
            sites:    [{id: office, name: Office, zone: America/Chicago, ladder: night}]
            boxes:    [{id: other-yard, site: office, heartbeat: {every: PT2S, grace: PT8S}}]
            contacts: [{id: ana, name: Ana Ruelas, zone: America/Chicago, lines: [{channel: mail, address: ana@mesa.example}]}]
            ladders:  [{id: night, rungs: [{call: [ana], wait: PT5M}]}]
            """;
    private static final Duration DEADLINE = Duration.ofSeconds(10);
    private static final Duration SOON = Duration.ofSeconds(60);

    /** For the machine, which is busy with three gateways' starts. */
    private static final Duration SLACK = Duration.ofSeconds(5);

    @TempDir
    private Path homes;

    @Test
    void when_one_is_killed_the_other_calls_somebody_within_the_deadline_and_hears_it_come_back() throws IOException {
        int port = freePort();
        String oneKey;
        try (JarGateway one = start("one", port)) {
            oneKey = setUp(one);
        }
        try (JarGateway two = start("two", freePort(), watchedBy(port, oneKey))) {
            String[] watched = watchedBy(two.web().port(), setUp(two));
            try (JarGateway one = start("one", port, watched)) {
                await().atMost(SOON).until(() -> heard(one) && heard(two) && quiet(one) && quiet(two));
                assertThat(two.said())
                        .contains("127.0.0.1:" + port + " does not hear that all is well here")
                        .doesNotContain(oneKey);

                one.kill();
            }
            int before = WholeGateway.CARRIER.getReceivedMessages().length;

            await().atMost(DEADLINE.plus(SLACK)).until(() -> !quiet(two));
            await().atMost(SOON).until(() -> WholeGateway.CARRIER.getReceivedMessages().length > before);

            try (JarGateway one = start("one", port, watched)) {
                await().atMost(SOON).until(() -> quiet(two) && quiet(one));
            }
        }
    }

    private JarGateway start(String home, int port, String... more) {
        var all = new ArrayList<>(List.of(
                "--server.port=" + port,
                "--yardlight.mail.from=yardlight@ranch.example",
                "--spring.mail.host=127.0.0.1",
                "--spring.mail.port=" + WholeGateway.CARRIER.getSmtp().getPort()));
        all.addAll(List.of(more));
        return JarGateway.ready(homes.resolve(home), all.toArray(String[]::new));
    }

    private static String[] watchedBy(int port, String key) {
        return new String[] {"--yardlight.watched-by.url=http://127.0.0.1:" + port, "--yardlight.watched-by.key=" + key
        };
    }

    /** Comes back with the key that the other one is to show here. */
    private static String setUp(JarGateway gateway) {
        Web web = gateway.web();
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
        HttpResponse<String> key = web.post("/api/v1/boxes/other-yard/keys", "application/json", "", Web.owner());
        return Web.json(key).get("key").asString();
    }

    /** Whether the other one has said that it hears this one. */
    private static boolean heard(JarGateway gateway) {
        return gateway.said().contains(" hears that all is well here; it expects to every PT2S");
    }

    /** Whether the other one is heard here: nothing of the alarm for its silence stands. */
    private static boolean quiet(JarGateway gateway) {
        return standing(gateway.web()).isEmpty();
    }

    private static List<String> standing(Web web) {
        JsonNode alarms = Web.json(web.get("/api/v1/alarms", Web.owner()));
        return StreamSupport.stream(alarms.spliterator(), false)
                .filter(alarm -> alarm.get("point").asString().equals("box"))
                .map(alarm -> alarm.get("state").asString())
                .filter(state -> state.equals("unacknowledged") || state.equals("acknowledged"))
                .toList();
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
