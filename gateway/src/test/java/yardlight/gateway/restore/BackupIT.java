package yardlight.gateway.restore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.JarGateway;
import yardlight.gateway.SmallGateway;
import yardlight.gateway.Web;
import yardlight.gateway.setup.Documents;

/** The whole way: a backup under load, stop, restore into the packaged gateway, start. */
class BackupIT {

    private static final int THREADS = 4;

    /** Every call is due again by the time the backup is put in place. */
    private static final String DOCUMENT = Documents.CONTRACT.replace("wait: PT5M", "wait: PT2S");

    @TempDir
    private Path home;

    private final Set<String> answered = ConcurrentHashMap.newKeySet();
    private Set<String> before = Set.of();

    @Test
    void made_under_load_holds_all_that_was_answered_before_it_and_its_calls_go_on() {
        Path backup = backUpUnderLoad();
        assertThat(before).isNotEmpty();
        assertThat(answered.size()).isGreaterThan(before.size());
        var carrier = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        carrier.start();
        try (JarGateway gateway = JarGateway.ready(
                home,
                "--yardlight.restore-from=" + backup,
                "--yardlight.mail.from=yard@ranch.example",
                "--spring.mail.host=127.0.0.1",
                "--spring.mail.port=" + carrier.getSmtp().getPort())) {
            for (String point : before) {
                String alarm = "/api/v1/alarms/mesa-9." + point + ".high.1";
                assertThat(gateway.web().get(alarm, Web.owner()).statusCode())
                        .as(point)
                        .isEqualTo(200);
            }
            assertThat(restoreLine(gateway)).contains("restored from " + backup.getFileName(), "is missing here");
            await().atMost(Duration.ofSeconds(60)).until(() -> carrier.getReceivedMessages().length > 0);
        } finally {
            carrier.stop();
        }
        assertThat(home.resolve("yardlight.aside-1.mv.db")).exists();
    }

    private Path backUpUnderLoad() {
        Path zip = home.resolve("yardlight-2026-11-25.zip");
        Setup setup = setup();
        try (SmallGateway gateway = new SmallGateway(TestDatabase.H2, url(), setup, List.of(), "lane")) {
            gateway.lane().setup(DOCUMENT, new Stimulus.SetupChanged(setup, "owner"));
            var stop = new AtomicBoolean();
            var number = new AtomicInteger();
            List<CompletableFuture<Void>> boxes = IntStream.range(0, THREADS)
                    .mapToObj(box -> CompletableFuture.runAsync(() -> post(gateway, number, stop)))
                    .toList();
            await().until(() -> answered.size() > 50);
            before = Set.copyOf(answered);
            gateway.jdbc().execute("backup to '" + zip + "'");
            int then = answered.size();
            await().until(() -> answered.size() > then);
            stop.set(true);
            boxes.forEach(CompletableFuture::join);
        }
        return zip;
    }

    private void post(SmallGateway gateway, AtomicInteger number, AtomicBoolean stop) {
        while (!stop.get()) {
            String point = "point-" + number.incrementAndGet();
            gateway.critical(new AlarmKey("mesa-9", point, "high"));
            answered.add(point);
        }
    }

    private static String restoreLine(JarGateway gateway) {
        for (JsonNode line : Web.json(gateway.web().get("/api/v1/log", Web.owner()))) {
            if (line.get("what").asString().equals("restore")) {
                return line.toString();
            }
        }
        return "no such line";
    }

    /** What is read from the document, as far as the lane alone needs it. */
    private static Setup setup() {
        var ladder = new Ladder(
                "night", Ladder.EndsWhen.ACKNOWLEDGED, List.of(new Rung(List.of("ana"), Duration.ofSeconds(2), 2)), 1);
        return Fixtures.calling(ladder);
    }

    private String url() {
        return "jdbc:h2:file:" + home.resolve("yardlight") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }
}
