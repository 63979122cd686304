package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.TestDatabase;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.gateway.SmallGateway;
import yardlight.gateway.lane.PostedEvent;

/** What the dispatcher has to do on every database, with the lane behind it and a channel that does as it is told. */
abstract class DispatcherContract {

    private static final String BOX = "mesa-9-box";

    /** So that nobody waits five real seconds for what was put off. */
    private static final double FASTER = 10;

    private final FakeChannel texts = FakeChannel.named("sms-mail");
    private final FakeChannel mail = FakeChannel.named("mail");
    private String url;
    private SmallGateway gateway;

    abstract TestDatabase database();

    private void start(Channel... channels) {
        url = url == null ? database().newUrl() : url;
        gateway = new SmallGateway(
                new SmallGateway.Place(database(), url, FASTER),
                Fixtures.theSetup(),
                List.of(channels),
                "lane",
                "dispatch");
    }

    @AfterEach
    void stop() {
        gateway.close();
    }

    @Test
    void sends_what_the_lane_has_queued_and_records_that_it_was_taken() {
        start(texts.answering(Attempt.accepted("250 taken")), mail);

        alarm();

        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(texts.taken()).hasSize(1);
        Message message = texts.taken().get(0);
        assertThat(message.address()).isEqualTo("5755550101@txt.example");
        assertThat(message.text()).contains("WATER TANK");
        assertThat(attempts()).containsExactly("sms-mail accepted 250 taken");
        assertThat(count("outbox")).isZero();
        assertThat(count("notice where handed_over_at is not null")).isEqualTo(1);
    }

    @Test
    void goes_on_to_the_next_line_when_one_refuses() {
        start(texts.answering(Attempt.refused("550 no such number")), mail);

        alarm();

        await().until(() -> mail.taken().size() == 1);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(attempts()).containsExactly("sms-mail refused 550 no such number", "mail accepted taken");
    }

    @Test
    void puts_off_and_sends_again_under_the_same_identity() {
        start(texts.answering(firstThen(Attempt.deferred("451 later"))), mail);

        alarm();

        await().atMost(Duration.ofSeconds(15)).until(() -> texts.tried().size() == 2);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(texts.tried()).extracting(Message::id).containsOnly(noticeId());
        assertThat(attempts()).containsExactly("sms-mail deferred 451 later", "sms-mail accepted taken");
        assertThat(count("log_line where what = 'attempt' and words like 'put off until%'"))
                .isEqualTo(1);
    }

    @Test
    void sends_what_nobody_answered_for_once_more_and_no_more() {
        start(texts.answering(Attempt.unknown("no answer")), mail);

        alarm();

        await().atMost(Duration.ofSeconds(15))
                .untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(texts.tried()).hasSize(2).extracting(Message::id).containsOnly(noticeId());
        assertThat(count("log_line where words like '%may not have been taken%'"))
                .isEqualTo(1);
    }

    @Test
    void does_not_send_what_is_over_by_the_time_it_would_go() {
        var busy = new CountDownLatch(1);
        start(texts.answering(message -> hold(busy)), mail);
        for (int i = 0; i < 8; i++) {
            alarm("point-" + i);
        }
        await().until(() -> texts.tried().size() == 4);
        for (int i = 0; i < 8; i++) {
            var key = new AlarmKey("mesa-9", "point-" + i, "high-high");
            gateway.lane().decide(new Stimulus.Acknowledge(key, "ben", "page", Optional.empty()));
        }

        busy.countDown();

        await().until(() -> count("outbox") == 0);
        await().until(() -> count("notice where state = 'handed-over'") == 4);
        assertThat(texts.tried()).hasSize(4);
        assertThat(count("notice where state = 'cancelled'")).isEqualTo(4);
    }

    @Test
    void lets_notices_wait_while_their_channel_is_not_set_up() {
        start(FakeChannel.notConfigured("sms-mail"), mail);
        alarm();
        await().during(Duration.ofMillis(600)).until(() -> noticeStates().equals(List.of("queued")));
        assertThat(attempts()).isEmpty();
        gateway.close();

        start(texts, mail);

        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
    }

    @Test
    void finishes_what_is_in_hand_before_it_stops() {
        var taken = new CountDownLatch(1);
        var goOn = new CountDownLatch(1);
        start(
                texts.answering(message -> {
                    taken.countDown();
                    return hold(goOn);
                }),
                mail);
        alarm();
        await().until(() -> taken.getCount() == 0);

        var closing = new Thread(gateway::close);
        closing.start();
        goOn.countDown();
        await().until(() -> !closing.isAlive());

        start(texts, mail);
        assertThat(noticeStates()).containsExactly("handed-over");
        assertThat(texts.tried()).hasSize(1);
    }

    @Test
    void sends_a_hundred_texts_each_once() {
        start(texts, mail);
        for (int i = 0; i < 100; i++) {
            alarm("point-" + i);
        }

        await().atMost(Duration.ofSeconds(20)).until(() -> count("outbox") == 0 && count("notice") > 0);
        assertThat(texts.tried()).extracting(Message::id).doesNotHaveDuplicates();
        assertThat(texts.tried()).hasSize((int) count("notice where state = 'handed-over'"));
    }

    private static Attempt hold(CountDownLatch until) {
        try {
            until.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Attempt.accepted("250 taken");
    }

    private static Function<Message, Attempt> firstThen(Attempt first) {
        var tries = new AtomicInteger();
        return message -> tries.getAndIncrement() == 0 ? first : Attempt.accepted("taken");
    }

    private void alarm() {
        alarm("water-tank");
    }

    private void alarm(String point) {
        var key = new AlarmKey("mesa-9", point, "high-high");
        var report = new Report(
                key, Optional.of(BOX), true, Optional.of(Priority.CRITICAL), Measured.NOTHING, Instant.now(), false);
        gateway.lane().events(BOX, List.of(new PostedEvent(Optional.empty(), report)), false);
    }

    private List<String> noticeStates() {
        return gateway.jdbc().queryForList("select state from notice order by queued_at, id", String.class);
    }

    private String noticeId() {
        return gateway.jdbc().queryForObject("select id from notice", String.class);
    }

    private List<String> attempts() {
        return gateway.jdbc()
                .queryForList(
                        "select channel || ' ' || outcome || ' ' || detail from attempt order by number", String.class);
    }

    private long count(String what) {
        return gateway.jdbc().queryForObject("select count(*) from " + what, Long.class);
    }
}
