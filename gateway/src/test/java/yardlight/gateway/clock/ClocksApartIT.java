package yardlight.gateway.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** Two gateways on one PostgreSQL, on machines whose clocks differ by minutes. */
class ClocksApartIT {

    private static final Duration LONG = Duration.ofHours(1);
    private static final Duration SHORT = Duration.ofMillis(1500);

    /** Longer than any lease. */
    private static final Duration SLOW = Duration.ofSeconds(7);

    /** No more than a person gets one by one. */
    private static final int ALARMS = 4;

    private final FakeChannel oneTexts = FakeChannel.named("sms-mail");
    private final FakeChannel otherTexts = FakeChannel.named("sms-mail");
    private final String url = TestDatabase.POSTGRESQL.newUrl();
    private SmallGateway one;
    private SmallGateway other;

    @AfterEach
    void stop() {
        one.close();
        other.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT2M", "-PT2M"})
    void leave_a_notice_alone_that_the_other_is_slow_to_send(Duration ahead) {
        var carrier = new CountDownLatch(1);
        oneTexts.takingAfter(carrier);
        otherTexts.takingAfter(carrier);
        start(ahead, LONG);
        one.critical(new AlarmKey("mesa-9", "water-tank", "high"));
        await().until(() -> tried().size() == 1);

        await().during(SLOW).atMost(SLOW.plusSeconds(10)).until(() -> tried().size() == 1);
        carrier.countDown();

        await().atMost(Duration.ofSeconds(20)).until(() -> count("outbox") == 0);
        assertThat(tried()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PT2M", "-PT2M"})
    void send_each_text_once_and_end_each_call(Duration ahead) {
        start(ahead, SHORT);
        for (int i = 0; i < ALARMS; i++) {
            (i % 2 == 0 ? one : other).critical(new AlarmKey("mesa-9", "point-" + i, "high"));
        }

        await().atMost(Duration.ofSeconds(40)).until(() -> count("callout where kind = 'exhausted'") == ALARMS);
        await().atMost(Duration.ofSeconds(20)).until(() -> count("outbox") == 0);
        assertThat(tried()).extracting(Message::id).hasSize(2 * ALARMS).doesNotHaveDuplicates();
        assertThat(count("attempt")).isEqualTo(2 * ALARMS);
    }

    private List<Message> tried() {
        return Stream.concat(oneTexts.tried().stream(), otherTexts.tried().stream())
                .toList();
    }

    private long count(String what) {
        return one.jdbc().queryForObject("select count(*) from " + what, Long.class);
    }

    private void start(Duration ahead, Duration wait) {
        one = start(Instant.now(), wait, oneTexts);
        other = start(Instant.now().plus(ahead), wait, otherTexts);
    }

    private SmallGateway start(Instant now, Duration wait, FakeChannel texts) {
        InstantSource clock = new SteadyClock(new Wall(now), System::nanoTime);
        var place = new SmallGateway.Place(TestDatabase.POSTGRESQL, url, 1, Optional.of(clock));
        return new SmallGateway(place, setup(wait), List.of(texts), "lane", "due", "dispatch");
    }

    private static Setup setup(Duration wait) {
        var rungs = List.of(new Rung(List.of("ben"), wait, 1), new Rung(List.of("ana"), wait, 1));
        return Fixtures.calling(new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, rungs, 0));
    }
}
