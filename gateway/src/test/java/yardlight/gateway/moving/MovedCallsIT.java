package yardlight.gateway.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import yardlight.channels.Attempt;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.db.evidence.HeadKey;
import yardlight.db.moving.MoveIn;
import yardlight.db.moving.MoveOut;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** What becomes of the calls and the notices of a gateway that moves: unlike after a restore, nothing has gone out since. */
class MovedCallsIT {

    /** No more than a person gets one by one. */
    private static final int ALARMS = 4;

    @TempDir
    private Path folder;

    static Stream<Arguments> ways() {
        return Stream.of(
                Arguments.of(TestDatabase.H2, TestDatabase.POSTGRESQL),
                Arguments.of(TestDatabase.POSTGRESQL, TestDatabase.H2));
    }

    @ParameterizedTest
    @MethodSource("ways")
    void what_waited_is_sent_once_and_each_call_goes_on(TestDatabase from, TestDatabase to) {
        String old = from.newUrl();
        List<String> waiting = everythingWaits(from, old);
        String fresh = to.newUrl();
        to.migrated(fresh).close();
        Path crate = folder.resolve("crate.zip");
        new MoveOut(source(from, old)).to(crate, Instant.now());
        new MoveIn(source(to, fresh), crate).in(Instant.now());
        FakeChannel texts = FakeChannel.named("sms-mail");

        try (SmallGateway gateway = start(to, fresh, texts, Duration.ofSeconds(15))) {
            await().atMost(Duration.ofSeconds(40)).until(() -> toAna(texts) == ALARMS);

            assertThat(texts.tried())
                    .extracting(Message::id)
                    .containsAll(waiting)
                    .doesNotHaveDuplicates();
            assertThat(texts.taken()).hasSize(2 * ALARMS);
            // A text's row goes once what became of it is stored, a moment after the carrier took it.
            await().until(() -> gateway.jdbc().queryForObject("select count(*) from outbox", Integer.class) == 0);
        }
    }

    /** A carrier that puts everything off: the first call of each alarm has not gone out when the gateway stops. */
    private static List<String> everythingWaits(TestDatabase database, String url) {
        FakeChannel away = FakeChannel.named("sms-mail").answering(Attempt.deferred("451 later"));
        try (SmallGateway gateway = start(database, url, away, Duration.ofSeconds(15))) {
            for (int i = 0; i < ALARMS; i++) {
                gateway.critical(new AlarmKey("mesa-9", "point-" + i, "high"));
            }
            await().until(() -> gateway.jdbc().queryForObject("select count(*) from attempt", Integer.class) >= ALARMS);
            gateway.jdbc()
                    .update(
                            "insert into secret (name, content, created_at) values (?, ?, current_timestamp)",
                            HeadKey.NAME,
                            Base64.getEncoder().encodeToString(HeadKey.fresh()));
            return gateway.jdbc().queryForList("select notice from outbox", String.class);
        }
    }

    private static long toAna(FakeChannel texts) {
        return texts.taken().stream()
                .filter(text -> text.address().startsWith("5755550101"))
                .count();
    }

    private static SmallGateway start(TestDatabase database, String url, FakeChannel texts, Duration wait) {
        return new SmallGateway(database, url, setup(wait), List.of(texts), "lane", "due", "dispatch");
    }

    private static DataSource source(TestDatabase database, String url) {
        return new DriverManagerDataSource(url, database.user(), "");
    }

    /** Ben, then Ana. */
    private static Setup setup(Duration wait) {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of("ben"), wait, 1), new Rung(List.of("ana"), Duration.ofMinutes(9), 1)),
                0);
        return Fixtures.calling(ladder);
    }
}
