package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
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
import yardlight.escalation.setup.Setup;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.Mails;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.edit.History;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.setup.SetupInForce;

/** Two text messages change who is called, through the whole gateway; the record and the history of edits say how. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class SwapIT {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final String ANA = "+1 575 555 0101";
    private static final String BEN = "+1 575 555 0102";
    private static final Pattern NUMBER = Pattern.compile("NO (\\d+) takes it back");

    /** Ana has the day since an hour ago, and the ladder calls whoever has it and nobody else. */
    private static final String SETUP = """
            sites:    [{id: mesa-9, name: Mesa 9, zone: America/Chicago, ladder: night}]
            boxes:    [{id: mesa-9-box, site: mesa-9}]
            contacts:
              - {id: ana, name: Ana Ruelas, lines: [{channel: sms-mail, address: 5755550101@txt.example}]}
              - {id: ben, name: Ben Tully, lines: [{channel: sms-mail, address: 5755550102@txt.example}]}
            rosters:  [{id: crew, zone: America/Chicago, start: "%s", tour: P2D, order: [ana, ben]}]
            ladders:  [{id: night, rungs: [{call: ["roster:crew"], wait: PT15M}]}]
            """;

    private final Web web;
    private final SetupInForce inForce;
    private final History history;

    @Autowired
    SwapIT(@LocalServerPort int port, SetupInForce inForce, History history) {
        this.web = new Web(port);
        this.inForce = inForce;
        this.history = history;
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
    }

    @BeforeEach
    void set_up() {
        LocalDateTime start = LocalDateTime.now(CHICAGO).minusHours(1).truncatedTo(ChronoUnit.MINUTES);
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP.formatted(start), Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
    }

    @Test
    void a_swap_that_is_agreed_by_two_texts_changes_who_is_called() {
        String asked = say(ANA, "swap today");
        assertThat(asked).startsWith("Asked for ").endsWith(": Ben Tully.");
        int number = number(asked);
        assertThat(textTo("5755550102@txt.example", "or NO " + number)).contains("Ana Ruelas asks: will you take over");

        String answer = say(BEN, "YES " + number);

        assertThat(answer)
                .startsWith("Thank you. You take over from Ana Ruelas ")
                .endsWith("and Ana Ruelas is told.");
        assertThat(textTo("5755550101@txt.example", "takes over from you")).contains("Ben Tully takes over from you");
        await().atMost(Duration.ofSeconds(90)).until(() -> onCall().equals(List.of("ben")));
        event("point=separator&condition=high&state=active&priority=critical");
        assertThat(textTo("5755550102@txt.example", "SEPARATOR")).contains("MESA 9 SEPARATOR HIGH");
        assertThat(texts("5755550101@txt.example", "SEPARATOR")).isEmpty();
        assertThat(say(BEN, "ALL")).startsWith("You have it, Ben Tully");
        assertLogged(number);
        assertThat(history.newest(Integer.MAX_VALUE, 1))
                .singleElement()
                .satisfies(edit -> assertThat(edit.by()).isEqualTo("Ben Tully, by text"));

        Saved taken =
                history.takeBack(history.newest(Integer.MAX_VALUE, 1).get(0).version(), "owner", "");

        assertThat(taken).isInstanceOf(Saved.Stored.class);
        assertThat(onCall()).containsExactly("ana");
    }

    @Test
    void who_says_no_takes_nothing_and_who_asked_can_take_it_back() {
        int number = number(say(ANA, "SWAP TODAY"));

        assertThat(say(BEN, "yes"))
                .isEqualTo("Do you mean the turn that you were asked to take? Then send YES " + number + ", or NO "
                        + number + ".");
        assertThat(say(BEN, "NO " + number))
                .isEqualTo("Noted: you do not take it. Nobody else is left; Ana Ruelas is told.");
        assertThat(say(ANA, "no " + number)).startsWith("Taken back: nobody is asked any more");
        assertThat(say(BEN, "YES " + number))
                .isEqualTo("Nothing was done: it was taken back; nobody needs to take it.");
        assertThat(say(BEN, "swap today")).isEqualTo("Nothing was done: you have no turn then.");
        assertThat(say(ANA, "swap")).startsWith("Which day? Send SWAP and the day");
        assertThat(onCall()).containsExactly("ana");
    }

    private void assertLogged(int number) {
        String log = web.get("/api/v1/log?contact=ana", Web.owner()).body();
        assertThat(log)
                .contains("swap " + number + " of crew asked for by ana: who takes over from ana")
                .contains("swap " + number + " of crew ben says yes and takes over from ana");
        assertThat(web.get("/api/v1/log?contact=ben", Web.owner()).body()).contains(BEN + " wrote: YES " + number);
        assertThat(web.get("/api/v1/log", Web.owner()).body()).contains("setup changed by Ben Tully, by text");
    }

    private static int number(String answer) {
        Matcher number = NUMBER.matcher(answer);
        assertThat(number.find()).as(answer).isTrue();
        return Integer.parseInt(number.group(1));
    }

    private String say(String from, String text) {
        HttpResponse<String> reply = web.post(
                "/api/v1/replies",
                "application/json",
                "{\"from\": \"" + from + "\", \"text\": \"" + text + "\"}",
                "Authorization",
                "Bearer " + GatewayTest.REPLIES_KEY);
        assertThat(reply.statusCode()).isEqualTo(200);
        return Web.json(reply).get("answer").asString();
    }

    private List<String> onCall() {
        Setup setup = inForce.setup();
        return setup.peopleBehind("roster:crew", java.time.Instant.now());
    }

    private void event(String fields) {
        JsonNode key = Web.json(web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner()));
        HttpResponse<String> answer = web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                fields,
                "Authorization",
                "Bearer " + key.get("key").asString());
        assertThat(answer.statusCode()).isEqualTo(202);
    }

    /** The newest with this word: the two tests share a carrier. */
    private static String textTo(String address, String word) {
        List<String> found =
                await().atMost(Duration.ofSeconds(20)).until(() -> texts(address, word), texts -> !texts.isEmpty());
        return found.get(found.size() - 1);
    }

    private static List<String> texts(String address, String word) {
        return Mails.texts(address).stream()
                .map(text -> text.replaceAll("=?\\r?\\n", " ").replaceAll(" +", " "))
                .filter(text -> text.contains(word))
                .toList();
    }
}
