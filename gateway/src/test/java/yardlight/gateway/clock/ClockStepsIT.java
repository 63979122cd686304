package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** Somebody sets the machine's clock while a rung waits. The gateway's clock is the real one on a wall that can be set. */
class ClockStepsIT {

    private static final Duration SHORT = Duration.ofSeconds(3);
    private static final Duration LONG = Duration.ofMinutes(1);

    private final FakeChannel texts = FakeChannel.named("sms-mail");
    private volatile Duration set = Duration.ZERO;
    private final SteadyClock clock = new SteadyClock(this::wall, System::nanoTime);
    private SmallGateway gateway;

    @AfterEach
    void stop() {
        gateway.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT1M", "PT1H", "PT10H"})
    void the_next_one_is_called_after_the_wait_when_the_clock_was_set_back(Duration step) {
        start(SHORT);
        gateway.critical(new AlarmKey("mesa-9", "water-tank", "high"));
        await().until(() -> texts.taken().size() == 1);

        set = step.negated();

        await().atMost(SHORT.plusSeconds(7)).until(() -> texts.taken().size() == 2);
        assertThat(texts.taken()).extracting(Message::id).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT1H", "PT10H"})
    void one_rung_is_called_after_a_step_forward_and_the_next_waits(Duration step) {
        start(LONG);
        gateway.critical(new AlarmKey("mesa-9", "water-tank", "high"));
        await().until(() -> texts.taken().size() == 1);

        set = step;

        await().until(() -> texts.taken().size() == 2);
        Instant next = time("select due_at from due where kind = 'callout'");
        assertThat(Duration.between(clock.instant(), next)).isBetween(LONG.minusSeconds(20), LONG);
    }

    @Test
    void no_box_is_silent_because_the_machine_slept() {
        start(LONG);
        gateway.lane().heartbeat("mesa-9-box", Heartbeat.BARE);
        Instant before = deadline();

        set = Duration.ofHours(10);

        await().until(() -> deadline().isAfter(before));
        assertThat(Duration.between(clock.instant(), deadline())).isPositive();
        assertThat(gateway.jdbc().queryForObject("select count(*) from callout", Long.class))
                .isZero();
    }

    private Instant deadline() {
        return time("select due_at from due where kind = 'box'");
    }

    private Instant time(String sql) {
        return gateway.jdbc().queryForObject(sql, OffsetDateTime.class).toInstant();
    }

    private Instant wall() {
        return Instant.now().plus(set).truncatedTo(ChronoUnit.MILLIS);
    }

    private void start(Duration wait) {
        String url = TestDatabase.H2.newUrl();
        var place = new SmallGateway.Place(TestDatabase.H2, url, 1, Optional.<InstantSource>of(clock));
        gateway = new SmallGateway(place, setup(wait), List.of(texts), "lane", "due", "dispatch");
    }

    private static Setup setup(Duration wait) {
        var rungs = List.of(
                new Rung(List.of("ben"), wait, 1),
                new Rung(List.of("ana"), wait, 1),
                new Rung(List.of("ben"), wait, 1));
        return Fixtures.calling(new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, rungs, 0));
    }
}
