package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import yardlight.channels.FakeChannel;
import yardlight.channels.Message;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.AlarmKey;

/** What happens on every database when a carrier goes down and comes back. */
abstract class OutageContract extends DispatchStage {

    private static final Duration LONG = Duration.ofSeconds(30);

    @Override
    double speed() {
        return 20;
    }

    @Test
    void its_notices_go_by_another_carrier_and_people_hear_of_it_there() {
        start(texts.away("localhost:25 cannot be reached"), mail);

        alarm();

        await().atMost(LONG).until(() -> said(mail, "MESA 9 WATER TANK") == 1);
        await().atMost(LONG).until(() -> said(mail, "GATEWAY SMS-MAIL DOWN") == 1);
        assertThat(texts.tried()).hasSizeLessThanOrEqualTo(Circuit.MOST_FAILURES);
        assertThat(texts.taken()).isEmpty();
        assertThat(count("alarm where site = 'gateway' and point = 'sms-mail' and state = 'unacknowledged'"))
                .isEqualTo(1);
        assertThat(count("log_line where what = 'carrier' and words like 'carrier sms-mail is down:%'"))
                .isEqualTo(1);
    }

    @Test
    void it_is_not_hammered() {
        start(texts.away("421 too busy"), mail.away("421 too busy"));
        for (int i = 0; i < 40; i++) {
            alarm("point-" + i);
        }
        await().atMost(LONG).until(() -> down("sms-mail") && down("mail"));
        int tried = texts.tried().size();
        int knocks = texts.knocks();

        await().during(Duration.ofSeconds(6))
                .atMost(LONG)
                .until(() -> texts.tried().size() == tried);

        assertThat(tried).isLessThanOrEqualTo(Circuit.MOST_FAILURES + 8);
        assertThat(texts.knocks() - knocks).isBetween(1, 5);
    }

    @Test
    void what_waited_goes_out_in_one_message_and_without_what_was_answered_meanwhile() {
        start(texts.away("cannot be reached"), mail.away("cannot be reached"));
        List.of("heater", "separator", "water-tank").forEach(this::alarm);
        await().atMost(LONG).until(() -> down("sms-mail") && down("mail"));
        await().atMost(LONG).until(() -> count("outbox") == 0);
        var answered = new AlarmKey("mesa-9", "heater", "high-high");
        gateway.lane().decide(new Stimulus.Acknowledge(answered, "ben", "page", Optional.empty()));

        texts.back();

        await().atMost(LONG)
                .untilAsserted(() -> assertThat(texts.taken())
                        .extracting(Message::text)
                        .filteredOn(text -> text.startsWith("MESA 9"))
                        .hasSize(1));
        await().during(Duration.ofSeconds(2)).until(() -> said(texts, "MESA 9") == 1);
        assertThat(texts.taken().get(0).text())
                .contains("2 alarms", "SEPARATOR", "WATER TANK")
                .doesNotContain("HEATER");
        assertThat(count("notice where state = 'cancelled'")).isEqualTo(1);
        assertThat(count("log_line where words = 'cancelled: it is over'")).isEqualTo(1);
    }

    @Test
    void one_that_takes_for_ever_does_not_keep_a_notice_from_the_other() {
        var over = new CountDownLatch(1);
        start(texts.answering(message -> hold(over)), mail);

        alarm();

        await().atMost(LONG).until(() -> mail.taken().size() == 1);
        await().untilAsserted(() -> assertThat(noticeStates()).containsExactly("handed-over"));
        assertThat(texts.tried()).hasSize(1);
        over.countDown();
        await().until(() -> attempts().size() == 2);
        assertThat(attempts()).containsExactly("mail accepted taken", "sms-mail accepted 250 taken");
        assertThat(texts.tried().get(0).id()).isEqualTo(mail.taken().get(0).id());
    }

    @Test
    void it_is_found_to_be_back_by_a_gateway_that_was_started_meanwhile() {
        start(texts.away("cannot be reached"), mail);
        alarm();
        await().atMost(LONG).until(() -> down("sms-mail"));
        gateway.close();

        FakeChannel again = FakeChannel.named("sms-mail");
        start(again, FakeChannel.named("mail"));

        await().atMost(LONG).until(() -> !down("sms-mail"));
        assertThat(count("log_line where words = 'carrier sms-mail is back: it answers'"))
                .isEqualTo(1);
        assertThat(again.knocks()).isPositive();
        assertThat(said(again, "GATEWAY")).isZero();
    }

    private long said(FakeChannel channel, String words) {
        return channel.taken().stream()
                .filter(message -> message.text().startsWith(words))
                .count();
    }

    private boolean down(String channel) {
        return count("alarm where site = 'gateway' and point = '" + channel + "' and clearing_since is null"
                        + " and (active or pending_since is not null)")
                == 1;
    }
}
