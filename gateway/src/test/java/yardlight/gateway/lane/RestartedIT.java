package yardlight.gateway.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.gateway.SmallGateway;

/** A gateway is started again on its database, and its box, which may be silent for three minutes, was not heard meanwhile. */
class RestartedIT {

    private static final String BOX = "mesa-9-box";
    private static final Duration PATIENCE = Duration.ofMinutes(3);

    private volatile Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void after_ten_minutes_takes_nobody_for_silent_who_has_not_been_silent_to_it_for_so_long(TestDatabase database) {
        String url = database.newUrl();
        started(database, url, gateway -> gateway.lane().heartbeat(BOX, Heartbeat.BARE));

        now = now.plusSeconds(600);
        started(database, url, gateway -> {
            Instant start = now;
            await().until(() -> deadlines(gateway).equals(List.of(start.plus(PATIENCE))));
            assertThat(alarms(gateway)).isZero();

            now = now.plus(PATIENCE);
            await().until(() -> alarms(gateway) == 1);
        });
    }

    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void after_a_moment_goes_on_with_the_deadline_that_there_was(TestDatabase database) {
        String url = database.newUrl();
        started(database, url, gateway -> {
            gateway.lane().heartbeat(BOX, Heartbeat.BARE);
            now = now.plus(PATIENCE).minusSeconds(5);
            gateway.store(Fixtures.theSetup());
        });

        now = now.plusSeconds(10);
        started(database, url, gateway -> await().until(() -> alarms(gateway) == 1));
    }

    /** Nothing was there to be stored for a minute and a half; it writes when it stops. */
    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void after_a_moment_goes_on_with_the_deadline_also_when_it_was_idle(TestDatabase database) {
        String url = database.newUrl();
        started(database, url, gateway -> {
            gateway.lane().heartbeat(BOX, Heartbeat.BARE);
            now = now.plusSeconds(90);
        });

        now = now.plusSeconds(5);
        started(database, url, gateway -> {
            gateway.store(Fixtures.theSetup());
            now = now.plusSeconds(85);
            await().until(() -> alarms(gateway) == 1);
        });
    }

    /** The power in the office flickers: the first start stores something, and says nothing of what is due. */
    @ParameterizedTest
    @EnumSource(TestDatabase.class)
    void after_ten_minutes_and_once_more_a_moment_later_takes_nobody_for_silent(TestDatabase database) {
        String url = database.newUrl();
        started(database, url, gateway -> gateway.lane().heartbeat(BOX, Heartbeat.BARE));

        now = now.plusSeconds(600);
        Instant back = now;
        started(database, url, List.of("lane"), gateway -> gateway.store(Fixtures.theSetup()));
        now = now.plusSeconds(5);
        started(database, url, gateway -> {
            await().until(() -> deadlines(gateway).equals(List.of(back.plus(PATIENCE))));
            assertThat(alarms(gateway)).isZero();
        });
    }

    @Test
    void the_second_of_two_that_were_both_off_knows_of_it_from_the_first() {
        String url = TestDatabase.POSTGRESQL.newUrl();
        started(TestDatabase.POSTGRESQL, url, gateway -> gateway.lane().heartbeat(BOX, Heartbeat.BARE));

        now = now.plusSeconds(600);
        Instant back = now;
        started(TestDatabase.POSTGRESQL, url, List.of("lane"), first -> {
            first.store(Fixtures.theSetup());
            now = now.plusSeconds(5);
            started(TestDatabase.POSTGRESQL, url, second -> {
                await().until(() -> deadlines(second).equals(List.of(back.plus(PATIENCE))));
                assertThat(alarms(second)).isZero();
            });
        });
    }

    private void started(TestDatabase database, String url, Consumer<SmallGateway> then) {
        started(database, url, List.of("lane", "due"), then);
    }

    private void started(TestDatabase database, String url, List<String> parts, Consumer<SmallGateway> then) {
        var place = new SmallGateway.Place(database, url, 1, Optional.of(() -> now));
        try (var gateway = new SmallGateway(place, Fixtures.theSetup(), List.of(), parts.toArray(String[]::new))) {
            then.accept(gateway);
        }
    }

    private static List<Instant> deadlines(SmallGateway gateway) {
        return gateway.jdbc()
                .query(
                        "select due_at from due where kind = 'box'",
                        (row, number) -> row.getTimestamp(1).toInstant());
    }

    private static long alarms(SmallGateway gateway) {
        return gateway.jdbc().queryForObject("select count(*) from alarm", Long.class);
    }
}
