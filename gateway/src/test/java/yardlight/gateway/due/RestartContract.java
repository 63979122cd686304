package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeChannel;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** Rung waits in real time, on every database. */
abstract class RestartContract {

    private static final Duration WAIT = Duration.ofSeconds(3);
    private static final String SECOND = "select queued_at from notice where contact = 'ana'";

    abstract TestDatabase database();

    @Test
    void keeps_a_rung_s_wait_within_a_second() {
        FakeChannel texts = FakeChannel.named("sms-mail");
        try (SmallGateway gateway = start(database().newUrl(), texts)) {
            gateway.critical(Fixtures.TANK);

            await().atMost(Duration.ofSeconds(10)).until(() -> texts.taken().size() == 2);
            assertThat(late(gateway)).isBetween(Duration.ZERO, Duration.ofSeconds(1));
        }
    }

    @Test
    void keeps_a_rung_s_wait_within_a_second_across_a_restart() {
        String url = database().newUrl();
        FakeChannel before = FakeChannel.named("sms-mail");
        try (SmallGateway gateway = start(url, before)) {
            gateway.critical(Fixtures.TANK);
            await().until(() -> before.taken().size() == 1);
        }

        FakeChannel after = FakeChannel.named("sms-mail");
        try (SmallGateway gateway = start(url, after)) {
            await().atMost(Duration.ofSeconds(10)).until(() -> after.taken().size() == 1);
            assertThat(late(gateway)).isBetween(Duration.ZERO, Duration.ofSeconds(1));
        }
    }

    /** By how much the second text was queued later than the first rung's wait. */
    private static Duration late(SmallGateway gateway) {
        Instant started = time(gateway, "select started_at from callout");
        return Duration.between(started.plus(WAIT), time(gateway, SECOND));
    }

    private static Instant time(SmallGateway gateway, String sql) {
        return gateway.jdbc()
                .queryForObject(sql, (rows, n) -> rows.getTimestamp(1).toInstant());
    }

    private SmallGateway start(String url, FakeChannel texts) {
        return new SmallGateway(database(), url, setup(), List.of(texts), "lane", "due", "dispatch");
    }

    private static Setup setup() {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(List.of("ben"), WAIT, 1), new Rung(List.of("ana"), Duration.ofMinutes(5), 1)),
                0);
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank()),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(),
                List.of(ladder));
    }
}
