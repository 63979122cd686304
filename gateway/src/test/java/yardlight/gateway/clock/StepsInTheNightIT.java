package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.FakeChannel;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;
import yardlight.gateway.lane.PostedEvent;

/** Somebody sets the machine's clock while something else than a rung waits. Ana is quiet from 21:00 to 06:00. */
class StepsInTheNightIT {

    private static final AlarmKey TANK = new AlarmKey("mesa-9", "water-tank", "high");
    private static final Duration DELAY = Duration.ofSeconds(3);

    /** What waits for seconds may take twice as long, on a machine that is busy with other tests. */
    private static final Duration SOON = Duration.ofSeconds(40);

    private final FakeChannel texts = FakeChannel.named("sms-mail");
    private Wall wall;
    private SmallGateway gateway;

    @AfterEach
    void stop() {
        gateway.close();
    }

    @ParameterizedTest
    @CsvSource({"H2, PT8H", "POSTGRESQL, PT10H"})
    void what_was_held_is_sent_once_when_a_step_forward_ends_the_quiet_hours(TestDatabase database, Duration step) {
        start(database, "2026-11-25T23:00", Duration.ZERO);
        post(Priority.MEDIUM);

        wall.set(step);

        sentOnce();
    }

    @ParameterizedTest
    @CsvSource({"H2, PT10M", "H2, PT5H", "H2, -PT10M", "H2, -PT10H", "POSTGRESQL, -PT1H"})
    void what_is_held_stays_held_to_the_same_time_when_the_step_ends_within_the_quiet_hours(
            TestDatabase database, Duration step) {
        start(database, "2026-11-25T23:00", Duration.ZERO);
        post(Priority.MEDIUM);
        Instant end = dueAt("desk");

        wall.set(step);

        said();
        assertThat(end).isEqualTo(at("2026-11-26T06:00"));
        assertThat(dueAt("desk")).isEqualTo(end);
        assertThat(texts.tried()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"H2, -PT10M", "H2, -PT10H", "POSTGRESQL, -PT10H"})
    void what_is_held_is_sent_once_at_its_time_when_the_clock_is_set_back_right_before(
            TestDatabase database, Duration step) {
        start(database, "2026-11-26T05:59:57", Duration.ZERO);
        post(Priority.MEDIUM);

        wall.set(step);

        sentOnce();
    }

    @ParameterizedTest
    @CsvSource({"H2, PT10M", "H2, PT10H", "H2, -PT10M", "H2, -PT10H", "POSTGRESQL, PT1H", "POSTGRESQL, -PT1H"})
    void an_on_delay_ends_and_its_alarm_is_told_once(TestDatabase database, Duration step) {
        start(database, "2026-11-25T12:00", DELAY);
        post(Priority.CRITICAL);
        assertThat(texts.tried()).isEmpty();

        wall.set(step);

        sentOnce();
    }

    @ParameterizedTest
    @CsvSource({"H2, PT10M", "H2, PT10H", "H2, -PT10M", "H2, -PT10H", "POSTGRESQL, PT1H", "POSTGRESQL, -PT1H"})
    void what_was_put_off_is_tried_again_once(TestDatabase database, Duration step) {
        var tries = new AtomicInteger();
        texts.answering(message ->
                tries.getAndIncrement() == 0 ? Attempt.deferred("450 not now") : Attempt.accepted("250 taken"));
        start(database, "2026-11-25T12:00", Duration.ZERO);
        post(Priority.CRITICAL);
        await().atMost(SOON).until(() -> count("select count(*) from attempt") == 1);

        wall.set(step);

        sentOnce();
        assertThat(texts.tried()).hasSize(2);
    }

    private void sentOnce() {
        said();
        await().atMost(SOON)
                .until(() -> count("select count(*) from notice where state in ('handed-over', 'delivered')") == 1);
        assertThat(texts.taken()).hasSize(1);
        assertThat(count("select count(*) from outbox")).isZero();
        assertThat(count("select count(*) from callout where live_site > ''")).isEqualTo(1);
        assertThat(count("select count(*) from due where kind = 'callout'"))
                .as("the call goes on")
                .isEqualTo(1);
    }

    /** The log has a line about the step. */
    private void said() {
        await().atMost(SOON).until(() -> count("select count(*) from log_line where what = 'clock'") == 1);
    }

    private long count(String sql) {
        return gateway.jdbc().queryForObject(sql, Long.class);
    }

    private Instant dueAt(String kind) {
        return gateway.jdbc()
                .queryForObject("select due_at from due where kind = ?", java.time.OffsetDateTime.class, kind)
                .toInstant();
    }

    private void post(Priority priority) {
        var report = new Report(
                TANK, Optional.of("mesa-9-box"), true, Optional.of(priority), Measured.NOTHING, wall.instant(), false);
        gateway.lane().events("mesa-9-box", List.of(new PostedEvent(Optional.empty(), report)), false);
    }

    private void start(TestDatabase database, String local, Duration onDelay) {
        wall = new Wall(at(local));
        InstantSource clock = new SteadyClock(wall, System::nanoTime);
        var place = new SmallGateway.Place(database, database.newUrl(), 1, Optional.of(clock));
        gateway = new SmallGateway(place, setup(onDelay), List.of(texts), "lane", "due", "dispatch");
    }

    private static Setup setup(Duration onDelay) {
        var timing = new Timing(onDelay, Duration.ZERO, false, Optional.empty(), Nuisance.Numbers.USUAL);
        var tank = new Point(
                "water-tank", "mesa-9", "WATER TANK", Optional.empty(), Optional.empty(), timing, Set.of(), true);
        var rungs = List.of(new Rung(List.of("ana"), Duration.ofHours(1), 2));
        return new Setup(
                List.of(Fixtures.aSite()),
                List.of(Fixtures.aBox()),
                List.of(tank),
                List.of(Fixtures.ana()),
                List.of(),
                List.of(new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, rungs, 9)));
    }
}
