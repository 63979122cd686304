package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.FakeChannel;
import yardlight.escalation.Stimulus;

/** A channel takes a text and gives its receipt late, or never; two minutes pass in two seconds. */
abstract class ReceiptContract extends DispatchStage {

    private static final String DUE = "due where kind = 'notice'";

    @Override
    double speed() {
        return 60;
    }

    @Test
    void without_one_the_text_goes_by_the_next_line_and_the_log_says_why() {
        taken();

        await().atMost(Duration.ofSeconds(20)).until(() -> mail.taken().size() == 1);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(
                        count(
                                "log_line where words like 'taken by sms-mail at % but no receipt for 2 min; the next line is tried'"))
                .isEqualTo(1);
        assertThat(count(DUE)).isZero();
        assertThat(texts.tried()).hasSize(1);
    }

    @Test
    void it_is_missed_by_a_gateway_that_was_started_meanwhile_too() {
        taken();
        gateway.close();

        FakeChannel after = FakeChannel.named("mail");
        start(FakeChannel.named("sms-mail"), after);

        await().atMost(Duration.ofSeconds(20)).until(() -> after.taken().size() == 1);
    }

    @Test
    void one_that_comes_in_time_leaves_nothing_to_do() {
        taken();

        receipt();

        assertThat(noticeStates()).containsExactly("delivered");
        assertThat(count(DUE)).isZero();
        await().during(Duration.ofSeconds(3))
                .atMost(Duration.ofSeconds(10))
                .until(() -> mail.tried().isEmpty());
    }

    @Test
    void one_that_comes_late_takes_back_what_was_not_sent_yet() {
        mail.answering(Attempt.deferred("451 later"));
        taken();
        await().atMost(Duration.ofSeconds(20)).until(() -> !mail.tried().isEmpty());

        receipt();
        mail.answering(Attempt.accepted("taken"));

        assertThat(noticeStates()).containsExactly("delivered");
        assertThat(count("outbox")).isZero();
        assertThat(gateway.jdbc().queryForList("select channel from notice", String.class))
                .containsExactly("sms-mail");
        await().during(Duration.ofSeconds(1))
                .atMost(Duration.ofSeconds(10))
                .until(() -> mail.taken().isEmpty());
    }

    private void taken() {
        start(texts.answering(Attempt.accepted("250 taken", "a-1")), mail);
        alarm();
        await().untilAsserted(() -> assertThat(noticeStates()).isEqualTo(List.of("handed-over")));
        assertThat(count(DUE)).isEqualTo(1);
    }

    private void receipt() {
        gateway.lane().decide(new Stimulus.NoticeFate(noticeId(), 0, Stimulus.Fate.DELIVERED, "DELIVRD"));
    }
}
