package yardlight.gateway.due;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.SmallGateway;

/** Two gateways on one PostgreSQL: each thing is done once, by either of them. */
class TwoGatewaysIT {

    /** No more than a person gets one by one. */
    private static final int ALARMS = 4;

    private final FakeChannel oneTexts = FakeChannel.named("sms-mail");
    private final FakeChannel twoTexts = FakeChannel.named("sms-mail");
    private SmallGateway one;
    private SmallGateway two;

    @BeforeEach
    void start() {
        String url = TestDatabase.POSTGRESQL.newUrl();
        one = start(url, oneTexts);
        two = start(url, twoTexts);
    }

    @AfterEach
    void stop() {
        one.close();
        two.close();
    }

    @Test
    void send_each_text_once_and_number_the_log_without_a_gap() {
        for (int i = 0; i < ALARMS; i++) {
            (i % 2 == 0 ? one : two).critical(new AlarmKey("mesa-9", "point-" + i, "high"));
        }

        await().atMost(Duration.ofSeconds(15)).until(() -> count("callout where kind = 'exhausted'") == ALARMS);
        await().until(() -> count("outbox") == 0);
        assertThat(texts()).extracting(Message::id).hasSize(2 * ALARMS).doesNotHaveDuplicates();
        assertThat(count("log_line")).isEqualTo(number("select last_line from lane"));
        assertThat(count("attempt")).isEqualTo(2 * ALARMS);
    }

    @Test
    void go_on_with_what_the_other_has_begun() {
        one.critical(new AlarmKey("mesa-9", "water-tank", "high"));
        await().until(() -> texts().size() == 1);

        one.close();

        await().atMost(Duration.ofSeconds(10))
                .until(() -> twoTexts.taken().stream()
                        .anyMatch(text -> text.address().startsWith("5755550101")));
    }

    @Test
    void leave_a_notice_alone_that_the_other_is_slow_to_send() {
        var carrier = new CountDownLatch(1);
        oneTexts.takingAfter(carrier);
        twoTexts.takingAfter(carrier);
        one.critical(new AlarmKey("mesa-9", "water-tank", "high"));
        await().until(() -> texts().size() == 1);

        await().pollDelay(Duration.ofSeconds(6)).atMost(Duration.ofSeconds(15)).until(() -> texts().size() == 2);
        carrier.countDown();

        await().atMost(Duration.ofSeconds(10)).until(() -> count("outbox") == 0);
        assertThat(texts()).extracting(Message::id).hasSize(2).doesNotHaveDuplicates();
    }

    @Test
    void go_by_the_setup_that_either_of_them_stores() {
        one.store(Fixtures.theSetup());

        await().atMost(Duration.ofSeconds(5)).until(() -> two.setup().rosters().containsKey("crew"));
    }

    private List<Message> texts() {
        return Stream.concat(oneTexts.tried().stream(), twoTexts.tried().stream())
                .toList();
    }

    private long count(String what) {
        return number("select count(*) from " + what);
    }

    private long number(String sql) {
        return two.jdbc().queryForObject(sql, Long.class);
    }

    private static SmallGateway start(String url, FakeChannel texts) {
        return new SmallGateway(TestDatabase.POSTGRESQL, url, setup(), List.of(texts), "lane", "due", "dispatch");
    }

    /** Ben for a second and a half, then Ana for as long, then nobody. */
    private static Setup setup() {
        var ladder = new Ladder(
                "night",
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(
                        new Rung(List.of("ben"), Duration.ofMillis(1500), 1),
                        new Rung(List.of("ana"), Duration.ofMillis(1500), 1)),
                0);
        return Fixtures.calling(ladder);
    }
}
