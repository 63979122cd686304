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
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.db.columns.Column;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;

/** What the dispatcher has to do on every database, with the lane behind it and a channel that does as it is told. */
abstract class DispatcherContract extends DispatchStage {

    @Override
    double speed() {
        return 10;
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
        assertThat(count("line_health where trouble = 'sms-mail: 451 later' and handed_over_at is not null"))
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

    @Test
    void tries_again_what_was_not_sent_because_of_a_mistake() {
        var tries = new AtomicInteger();
        start(
                texts.answering(message -> {
                    switch (tries.getAndIncrement()) {
                        case 0 -> throw new IllegalStateException("a mistake made up for this test");
                        case 1 -> throw new OutOfMemoryError("made up for this test");
                        default -> {
                            return Attempt.accepted("taken");
                        }
                    }
                }),
                mail);

        alarm();

        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(texts.tried()).hasSize(3).extracting(Message::id).containsOnly(noticeId());
        assertThat(attempts()).containsExactly("sms-mail accepted taken");
    }

    @Test
    void finds_who_has_no_such_line_behind_any_number_that_wait_for_a_channel() {
        start(FakeChannel.notConfigured("sms-mail"), FakeChannel.notConfigured("mail"));
        for (int i = 0; i < 250; i++) {
            waiting("waiting-" + i, "ben", i);
        }
        waiting("stranded", "long-gone", 999);

        await().atMost(Duration.ofSeconds(15))
                .until(() -> count("notice where id = 'stranded' and state = 'refused'") == 1);
        assertThat(count("notice where state = 'queued'")).isEqualTo(250);
        assertThat(count("outbox")).isEqualTo(250);
    }

    private void waiting(String id, String contact, int number) {
        Object at = Column.stored(Instant.parse("2026-11-25T08:13:00Z").plusMillis(number));
        gateway.jdbc()
                .update(
                        "insert into notice (id, contact, callouts, priority, words, state, queued_at, line)"
                                + " values (?, ?, 'c-1', 'high', 'MESA 9', 'queued', ?, 0)",
                        id,
                        contact,
                        at);
        gateway.jdbc()
                .update(
                        "insert into outbox (notice, channel, ready_at, queued_at, deferrals, doubts)"
                                + " values (?, 'sms-mail', ?, ?, 0, 0)",
                        id,
                        at,
                        at);
    }

    private static Function<Message, Attempt> firstThen(Attempt first) {
        var tries = new AtomicInteger();
        return message -> tries.getAndIncrement() == 0 ? first : Attempt.accepted("taken");
    }
}
