package yardlight.gateway.mail;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.store.FolderException;
import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Flags;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Date;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import tools.jackson.databind.JsonNode;
import yardlight.gateway.Web;
import yardlight.gateway.WholeGateway;
import yardlight.gateway.setup.Documents;

/** A night by mail through the whole gateway and a server not written here: out over SMTP, back over IMAP. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class MailNightIT {

    private static final String OWN = "yardlight@ranch.example";
    private static final String ANA = "ana@mesa.example";
    private static final String PHONE = "5755550101@txt.example";
    private static final String SETUP = Documents.CONTRACT.replace(
            "{channel: sms-mail, address: 5755550101@txt.example}, {channel: mail, address: ana@mesa.example}",
            "{channel: mail, address: ana@mesa.example}, {channel: sms-mail, address: 5755550101@txt.example}");

    private static final GreenMail POST = new GreenMail(new ServerSetup[] {
        new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP),
        new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_IMAP)
    });
    private static final GreenMailUser USER;

    static {
        POST.start();
        USER = POST.setUser(OWN, OWN, "not-a-real-password");
    }

    private static int number;

    private final Web web;

    MailNightIT(@LocalServerPort int port) {
        this.web = new Web(port);
    }

    @DynamicPropertySource
    static void settings(DynamicPropertyRegistry registry) {
        WholeGateway.settings(registry);
        registry.add("spring.mail.port", () -> POST.getSmtp().getPort());
        registry.add("yardlight.mailbox.host", () -> "127.0.0.1");
        registry.add("yardlight.mailbox.port", () -> POST.getImap().getPort());
        registry.add("yardlight.mailbox.tls", () -> "none");
        registry.add("yardlight.mailbox.password", () -> "not-a-real-password");
    }

    @AfterAll
    static void close() {
        POST.stop();
    }

    @BeforeEach
    void set_up() {
        HttpResponse<String> stored = web.put("/api/v1/setup", "application/yaml", SETUP, Web.owner());
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(200);
    }

    @Test
    void an_ok_to_the_mail_acknowledges_and_is_answered_as_an_answer() throws Exception {
        String alarm = raised();
        MimeMessage call = arrived(ANA, 0);
        assertThat(call.getHeader("Auto-Submitted")).containsExactly("auto-generated");

        answers(ANA, "<ana.1@mesa.example>", call.getMessageID(), "OK\n\n> MESA 9 WATER TANK. Reply OK 99");

        MimeMessage answer = arrived(ANA, 1);
        assertThat(GreenMailUtil.getBody(answer)).startsWith("You have it, Ana Ruelas: Mesa 9 WATER TANK");
        assertThat(answer.getHeader("In-Reply-To")).containsExactly("<ana.1@mesa.example>");
        assertThat(answer.getHeader("Auto-Submitted")).containsExactly("auto-replied");
        assertThat(read(alarm).get("acknowledgedBy").asString()).isEqualTo("ana");
        await(() -> unread() == 0);
        assertThat(web.get("/actuator/health/readiness", Web.owner()).body())
                .contains("answers by mail are heard at 127.0.0.1:")
                .doesNotContain("not-a-real-password");
    }

    @Test
    void who_only_says_to_be_somebody_must_show_the_number_that_was_sent() throws Exception {
        String alarm = raised();
        String code = GreenMailUtil.getBody(arrived(ANA, 0)).replaceAll("(?s).*OK (\\d+).*", "$1");

        answers(ANA, "<forged.1@evil.example>", "<made-up@ranch.example>", "OK");
        assertThat(GreenMailUtil.getBody(arrived(ANA, 1))).startsWith("Nothing was done.");
        assertThat(read(alarm).get("state").asString()).isEqualTo("unacknowledged");

        answers(ANA, "<ana.2@mesa.example>", "<made-up@ranch.example>", "OK " + code);
        assertThat(GreenMailUtil.getBody(arrived(ANA, 2))).startsWith("You have it, Ana Ruelas");
        assertThat(read(alarm).get("state").asString()).isEqualTo("acknowledged");
    }

    @Test
    void a_machine_and_a_stranger_are_neither_heeded_nor_answered() throws Exception {
        String alarm = raised();
        MimeMessage call = arrived(ANA, 0);
        String id = call.getMessageID();

        lies("From: " + ANA + "\nIn-Reply-To: " + id + "\nAuto-Submitted: auto-replied\n\nOK\n");
        lies("From: clerk@feed.example\nIn-Reply-To: " + id + "\n\nOK\n");
        answers(ANA, "<ana.3@mesa.example>", id, "STATUS");

        assertThat(GreenMailUtil.getBody(arrived(ANA, 1))).contains("wait for an answer");
        await(() -> unread() == 0);
        assertThat(to(ANA)).hasSize(2);
        assertThat(to("clerk@feed.example")).isEmpty();
        assertThat(read(alarm).get("state").asString()).isEqualTo("unacknowledged");
    }

    @Test
    void a_text_by_mail_is_answered_as_a_text() throws Exception {
        String alarm = raised();
        MimeMessage call = arrived(ANA, 0);
        String code = GreenMailUtil.getBody(call).replaceAll("(?s).*OK (\\d+).*", "$1");

        lies("From: " + PHONE + "\nMessage-ID: <t1@txt.example>\n\nOk" + code + "\n\n--\nSent with Examplecell.\n");

        MimeMessage answer = arrived(PHONE, 0);
        assertThat(GreenMailUtil.getBody(answer))
                .startsWith("You have it, Ana Ruelas")
                .doesNotContain("Yardlight, notice");
        assertThat(answer.getSubject()).isNull();
        assertThat(read(alarm).get("acknowledgedBy").asString()).isEqualTo("ana");
    }

    @Test
    void a_bounce_sends_it_to_the_next_line_at_once() throws Exception {
        raised();
        MimeMessage call = arrived(ANA, 0);

        lies(bounce(call.getMessageID()));

        assertThat(GreenMailUtil.getBody(arrived(PHONE, 0))).startsWith("MESA 9 WATER TANK");
        await(() -> log().contains("550 5.1.1 no such mailbox"));
    }

    private static String bounce(String about) {
        return "Return-Path: <>\nFrom: MAILER-DAEMON@mx.mesa.example\nMIME-Version: 1.0\nContent-Type: multipart/report;"
                + " report-type=delivery-status; boundary=b\n\n--b\n\nThere is no such mailbox.\n--b\n"
                + "Content-Type: message/delivery-status\n\nReporting-MTA: dns; mx.mesa.example\n\n"
                + "Final-Recipient: rfc822; ana@mesa.example\nAction: failed\nStatus: 5.1.1\n"
                + "Diagnostic-Code: smtp; 550 5.1.1 no such mailbox\n\n--b\nContent-Type: text/rfc822-headers\n\nMessage-ID: "
                + about + "\n\n--b--\n";
    }

    /** Each test has an alarm of its own, of which Ana is told first. */
    private String raised() throws Exception {
        HttpResponse<String> key = web.post("/api/v1/boxes/mesa-9-box/keys", "application/json", "", Web.owner());
        for (JsonNode alarm : Web.json(web.get("/api/v1/alarms?state=unacknowledged", Web.owner()))) {
            web.post(
                    "/api/v1/alarms/" + alarm.get("id").asString() + "/acknowledge",
                    "application/json",
                    "{}",
                    Web.owner());
        }
        for (String address : List.of(ANA, PHONE)) {
            if (POST.getUserManager().getUserByEmail(address) != null) {
                POST.getManagers()
                        .getImapHostManager()
                        .getInbox(POST.getUserManager().getUserByEmail(address))
                        .deleteAllMessages();
            }
        }
        HttpResponse<String> answer = web.post(
                "/api/v1/events",
                "application/x-www-form-urlencoded",
                "point=water-tank&condition=high-" + ++number + "&state=active&priority=critical",
                "Authorization",
                "Bearer " + Web.json(key).get("key").asString());
        return Web.json(answer).get("results").get(0).get("alarm").asString();
    }

    private static void answers(String from, String id, String to, String words) throws Exception {
        lies("From: " + from + "\nTo: " + OWN + "\nSubject: Re: MESA 9\nMessage-ID: " + id + "\nIn-Reply-To: " + to
                + "\n\n" + words + "\n");
    }

    /** In the gateway's mailbox, as its server puts it there. */
    private static void lies(String mail) throws Exception {
        var bytes = new ByteArrayInputStream(mail.replace("\n", "\r\n").getBytes(StandardCharsets.US_ASCII));
        POST.getManagers()
                .getImapHostManager()
                .getInbox(USER)
                .appendMessage(new MimeMessage(Session.getInstance(new Properties()), bytes), new Flags(), new Date());
    }

    private static int unread() throws FolderException {
        return POST.getManagers().getImapHostManager().getInbox(USER).getUnseenCount();
    }

    private static MimeMessage arrived(String address, int place) {
        await(() -> to(address).size() > place);
        return to(address).get(place);
    }

    private static List<MimeMessage> to(String address) {
        return Stream.of(POST.getReceivedMessagesForDomain(address)).toList();
    }

    private JsonNode read(String alarm) {
        return Web.json(web.get("/api/v1/alarms/" + alarm, Web.owner()));
    }

    private String log() {
        return web.get("/api/v1/log", Web.owner()).body();
    }

    private static void await(Callable<Boolean> done) {
        org.awaitility.Awaitility.await().atMost(Duration.ofSeconds(20)).until(done);
    }
}
