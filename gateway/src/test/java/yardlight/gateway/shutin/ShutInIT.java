package yardlight.gateway.shutin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.db.shutin.ShutIns;
import yardlight.escalation.shutin.Request;
import yardlight.escalation.shutin.RequestState;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** A site is asked to shut in by both ways: never done twice or late, and never unreported. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ShutInIT {

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String BY_BOX = Documents.CONTRACT.replace(
            "ladder: night}]\n", "ladder: night, shutIn: {box: mesa-9-box, expires: PT2M, confirmWithin: PT3M}}]\n");
    private static final String BY_RELAY = Documents.CONTRACT.replace(
            "ladder: night}]\n", "ladder: night, shutIn: {relay: valve, expires: PT2M, confirmWithin: PT3M}}]\n");
    private static final List<String> RELAYED = new CopyOnWriteArrayList<>();
    private static final HttpServer RELAY = relay();

    private final Web web;
    private final ShutIns shutIns;
    private String key;
    private ReferenceBox box;

    @Autowired
    ShutInIT(@LocalServerPort int port, ShutIns shutIns) {
        this.web = new Web(port);
        this.shutIns = shutIns;
    }

    private static HttpServer relay() {
        try {
            HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 10);
            server.createContext("/", exchange -> {
                RELAYED.add(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
                // The first answer is lost.
                exchange.sendResponseHeaders(RELAYED.size() == 1 ? 504 : 202, -1);
                exchange.close();
            });
            server.start();
            return server;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add(
                "yardlight.relay.valve.url",
                () -> "http://127.0.0.1:" + RELAY.getAddress().getPort() + "/stop");
        registry.add("yardlight.relay.valve.body", () -> "{\"id\": \"{id}\", \"expires\": \"{text}\"}");
    }

    @BeforeEach
    void set_up() {
        setup(Documents.CONTRACT);
        setup(BY_BOX);
        key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()))
                .get("key")
                .asString();
        box = new ReferenceBox("mesa-9-box", key);
    }

    private void setup(String document) {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", document, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
    }

    private HttpResponse<String> post(String path, String body) {
        return web.post(path, FORM, body, Web.owner());
    }

    private void turnOn() {
        String page = web.get("/sites/mesa-9/shut-in/on?step=6", "Authorization", Web.owner()[1], "Accept", "text/html")
                .body();
        Matcher terms = Pattern.compile("name=\"terms\" value=\"([^\"]+)\"").matcher(page);
        assertThat(terms.find()).as(page).isTrue();
        String body = "name=Mesa+9&terms=" + URLEncoder.encode(terms.group(1), StandardCharsets.UTF_8);
        assertThat(post("/sites/mesa-9/shut-in/on", body).statusCode()).isEqualTo(303);
    }

    private HttpResponse<String> ask() {
        return post("/sites/mesa-9/shut-in", "name=mesa+9&sure=yes");
    }

    private JsonNode beat() {
        return Web.json(web.post("/api/v1/heartbeats", FORM, "", "Authorization", "Bearer " + key));
    }

    private JsonNode event(String body) {
        return Web.json(web.post("/api/v1/events", FORM, body, "Authorization", "Bearer " + key))
                .get("results")
                .get(0);
    }

    private Request request() {
        return shutIns.of("mesa-9").request().orElseThrow();
    }

    private String log() {
        return web.get("/api/v1/log?what=shut-in", Web.owner()).body();
    }

    @Test
    void is_off_until_the_owner_types_its_name() {
        assertThat(ask().statusCode()).isEqualTo(409);
        assertThat(post("/sites/mesa-9/shut-in/on", "name=Mesa+8&terms=x").statusCode())
                .isEqualTo(422);
        assertThat(post("/sites/mesa-9/shut-in/on", "name=Mesa+9&terms=x").statusCode())
                .isEqualTo(409);
        assertThat(beat().has("requests")).isFalse();
    }

    @Test
    void a_copy_of_the_setup_with_other_words_turns_it_off() {
        turnOn();

        setup(BY_BOX.replace("expires: PT2M", "expires: PT90S"));

        assertThat(ask().statusCode()).isEqualTo(409);
        assertThat(log()).contains("settings for it were changed or taken away");
    }

    @Test
    void a_name_alone_asks_for_a_second_word() {
        turnOn();

        HttpResponse<String> first = post("/sites/mesa-9/shut-in", "name=Mesa+9");

        assertThat(first.statusCode()).isEqualTo(200);
        assertThat(first.body()).contains("Once more: ask Mesa 9 to shut in now?");
        assertThat(shutIns.of("mesa-9").open()).isEmpty();
    }

    @Test
    void a_box_does_it_once_though_answers_are_lost_and_confirms_it() {
        turnOn();
        assertThat(ask().statusCode()).isEqualTo(303);
        assertThat(ask().statusCode()).isEqualTo(303);
        beat();

        JsonNode answer = beat();
        box.reads(answer, Instant.now());
        box.reads(beat(), Instant.now());
        box.reads(answer, Instant.now().plus(Duration.ofMinutes(3)));

        assertThat(box.done).containsExactly(request().id());
        assertThat(box.leftAlone).containsExactly("seen", "expired");
        assertThat(request().state()).isEqualTo(RequestState.FETCHED);

        JsonNode said = event("point=shut-in&condition=done&state=active&request=" + box.done.get(0));
        JsonNode again = event("point=shut-in&condition=done&state=active&request=" + box.done.get(0));
        JsonNode old = event("point=shut-in&condition=done&state=active&request=mesa-9.shut-in.old");

        assertThat(said.get("outcome").asString()).isIn("occurred", "repeated");
        assertThat(again.get("note").asString()).endsWith("is over: confirmed");
        assertThat(old.get("note").asString()).contains("is not the last one");
        assertThat(request().state()).isEqualTo(RequestState.CONFIRMED);
        assertThat(beat().has("requests")).isFalse();
        assertThat(log()).contains("asked for by owner on the page", "once more", "confirmed by mesa-9-box");
        event("point=shut-in&condition=done&state=normal");
    }

    @Test
    void a_forged_or_changed_request_is_left_alone() {
        turnOn();
        ask();
        JsonNode asked = beat().get("requests").get(0);
        String id = asked.get("id").asString();
        String signature = asked.get("signature").asString();

        box.take(id, "shut-in", "2099-01-01T00:00:00Z", signature, Instant.now());
        new ReferenceBox("loma-4-box", key).reads(beat(), Instant.now());
        var other = new ReferenceBox("loma-4-box", key);
        other.reads(beat(), Instant.now());

        assertThat(box.leftAlone).containsExactly("forged");
        assertThat(other.done).isEmpty();
        event("point=shut-in&condition=done&state=active&request=" + id);
        event("point=shut-in&condition=done&state=normal");
    }

    @Test
    void a_relay_gets_the_same_request_again_when_nobody_knows_whether_it_took_it() {
        setup(BY_RELAY);
        turnOn();
        ask();

        await().atMost(Duration.ofSeconds(60))
                .untilAsserted(() -> assertThat(request().state()).isEqualTo(RequestState.FETCHED));

        assertThat(RELAYED).hasSize(2).allMatch(body -> body.contains(request().id()));
        assertThat(RELAYED.get(0)).isEqualTo(RELAYED.get(1));
        assertThat(log()).contains("relay valve: 504", "relay valve: 202");
        event("point=shut-in&condition=done&state=active");
        assertThat(request().state()).isEqualTo(RequestState.CONFIRMED);
        event("point=shut-in&condition=done&state=normal");
    }

    @Test
    void a_text_asks_only_once_the_code_has_come_back_from_the_same_line() {
        turnOn();
        event("point=water-tank&condition=high-high&state=active&priority=critical");
        int number = await().atMost(Duration.ofSeconds(20))
                .until(this::number, Optional::isPresent)
                .orElseThrow();

        String sure = reply("+15755550101", "SHUT " + number);
        Matcher code = Pattern.compile("SHUT (\\d{6})").matcher(sure);
        assertThat(code.find()).as(sure).isTrue();
        String wrongLine = reply("+15755550102", "SHUT " + code.group(1));
        assertThat(shutIns.of("mesa-9").open()).isEmpty();
        String asked = reply("+15755550101", "SHUT " + code.group(1));

        assertThat(wrongLine).contains("Nothing was done");
        assertThat(asked).contains("Mesa 9 is asked to shut in. Not done yet");
        assertThat(request().asker().by()).isEqualTo("ana");
        event("point=shut-in&condition=done&state=active&request=" + request().id());
        event("point=shut-in&condition=done&state=normal");
        event("point=water-tank&condition=high-high&state=normal");
    }

    private Optional<Integer> number() {
        JsonNode alarms = Web.json(web.get("/api/v1/alarms?site=mesa-9&state=unacknowledged", Web.owner()));
        return alarms.isEmpty() || !alarms.get(0).has("callout")
                ? Optional.empty()
                : Optional.of(alarms.get(0).get("callout").get("code").asInt());
    }

    private String reply(String from, String text) {
        return Web.json(web.post(
                        "/api/v1/replies",
                        "application/json",
                        "{\"from\": \"" + from + "\", \"text\": \"" + text + "\"}",
                        "Authorization",
                        "Bearer " + GatewayTest.REPLIES_KEY))
                .get("answer")
                .asString();
    }
}
