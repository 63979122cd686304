package yardlight.channels.smpp;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.jsmpp.SMPPConstant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardlight.channels.Attempt;
import yardlight.channels.Attempt.Outcome;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.smpp.SmppSettings.Timeouts;
import yardlight.channels.smpp.StandInCentre.Does;

/** Centres that refuse, throttle, hang up, fall silent or take their leave. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SmppTroubleIT {

    private static final Timeouts SHORT =
            new Timeouts(Duration.ofSeconds(2), Duration.ofMillis(800), Duration.ofSeconds(5), Duration.ofMinutes(1));

    private StandInCentre centre;
    private SmppChannel channel;

    @BeforeEach
    void open() throws IOException {
        centre = new StandInCentre();
        channel = channel(Centres.at(centre.port()));
    }

    @AfterEach
    void close() throws IOException {
        centre.close();
        channel.close();
    }

    private static SmppChannel channel(SmppSettings settings) {
        return SmppChannel.of(Optional.of(settings), InstantSource.fixed(Instant.EPOCH));
    }

    private void waits(Timeouts timeouts) {
        channel = channel(Centres.at(centre.port(), timeouts));
    }

    private Attempt send() {
        return send("MESA 9");
    }

    private Attempt send(String text) {
        return channel.send(new Message("callout-7.2", "+15755550101", text, Instant.EPOCH));
    }

    @Test
    void throttled_it_waits_and_leaves_the_centre_alone() {
        centre.status = SMPPConstant.STAT_ESME_RTHROTTLED;

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.retryAfter()).contains(Status.THROTTLED);
        assertThat(attempt.general()).isFalse();

        centre.status = SMPPConstant.STAT_ESME_ROK;
        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(centre.sessions()).isOne();
    }

    @Test
    void cut_after_the_text_nobody_knows_and_nobody_waits_for_the_time_to_pass() {
        centre.text = Does.HANG_UP;
        long start = System.nanoTime();

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(attempt.detail()).startsWith("sent, but not confirmed");
        assertThat(attempt.general()).isTrue();
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Centres.PATIENT.response());
        assertThat(centre.taken).hasSize(1);
    }

    @Test
    void silent_after_the_text_nobody_knows() {
        waits(SHORT);
        centre.text = Does.SILENCE;

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.UNKNOWN);
        assertThat(attempt.detail()).contains("no answer to submit_sm within 800 ms");
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(centre.taken).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0x0D, ANSWER, bind failed",
        "0x0E, ANSWER, invalid password",
        "0x05, ANSWER, already bound",
        "0, HANG_UP, hung up at the bind",
        "0, SILENCE, no answer to the bind"
    })
    void not_let_in_everything_waits(String status, Does what, String words) {
        waits(SHORT);
        centre.bindStatus = Integer.decode(status);
        centre.bind = what;

        Attempt attempt = send();

        assertThat(attempt.outcome()).isEqualTo(Outcome.DEFERRED);
        assertThat(attempt.general()).isTrue();
        assertThat(attempt.detail()).contains(words).contains("localhost:" + centre.port());
        assertThat(channel.health().state()).isEqualTo(Health.State.TROUBLED);
        assertThat(channel.health().sentence()).contains(words);
        assertThat(channel.knock().orElseThrow()).contains(words);
    }

    @Test
    void not_let_in_it_says_so_at_once_and_does_not_hammer() {
        centre.bindStatus = SMPPConstant.STAT_ESME_RINVPASWD;
        send();
        long start = System.nanoTime();
        for (int i = 0; i < 500; i++) {
            assertThat(send().outcome()).isEqualTo(Outcome.DEFERRED);
        }

        // 250 ms, then doubled: after so long there can have been no more binds than this.
        long passed = Duration.ofNanos(System.nanoTime() - start).toMillis();
        assertThat(centre.binds.size()).isLessThanOrEqualTo(2 + 64 - Long.numberOfLeadingZeros(passed / 250 + 1));
    }

    @Test
    void let_in_again_it_goes_on_by_itself() {
        centre.bindStatus = SMPPConstant.STAT_ESME_RSYSERR;
        send();
        centre.bindStatus = SMPPConstant.STAT_ESME_ROK;

        await().atMost(30, TimeUnit.SECONDS).until(() -> send().outcome() == Outcome.ACCEPTED);

        assertThat(channel.health().state()).isEqualTo(Health.State.READY);
    }

    @Test
    void knocked_at_it_tries_at_once() {
        centre.bindStatus = SMPPConstant.STAT_ESME_RSYSERR;
        for (int i = 0; i < 8; i++) {
            assertThat(channel.knock()).isPresent();
        }
        centre.bindStatus = SMPPConstant.STAT_ESME_ROK;

        assertThat(channel.knock()).isEmpty();
        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void left_by_the_other_side_the_next_text_goes_over_a_new_session() {
        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
        centre.leave();

        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(centre.sessions()).isEqualTo(2);
    }

    @Test
    void cut_while_nothing_is_under_way_the_session_is_opened_again_without_a_text() {
        send();
        centre.cut();

        await().atMost(30, TimeUnit.SECONDS).until(() -> centre.sessions() == 2);
        assertThat(send().outcome()).isEqualTo(Outcome.ACCEPTED);
    }

    @Test
    void a_centre_that_does_not_answer_when_it_is_asked_is_left() {
        waits(new Timeouts(
                Duration.ofSeconds(5), Duration.ofMillis(800), Duration.ofSeconds(20), Duration.ofMillis(300)));
        centre.enquiry = Does.SILENCE;
        send();

        await().atMost(30, TimeUnit.SECONDS).until(() -> centre.sessions() >= 2);

        assertThat(centre.enquiries.get()).isPositive();
    }

    @Test
    void a_centre_that_answers_when_it_is_asked_is_kept() {
        waits(new Timeouts(
                Duration.ofSeconds(5), Duration.ofSeconds(10), Duration.ofSeconds(20), Duration.ofMillis(200)));
        send();

        await().atMost(30, TimeUnit.SECONDS).until(() -> centre.enquiries.get() >= 3);

        assertThat(centre.sessions()).isOne();
    }

    @Test
    void no_more_are_under_way_than_the_window_has_room_for() throws Exception {
        channel = channel(Centres.at(centre.port(), 3, Centres.PATIENT));
        // A fourth one would open this at once; three wait for it in vain.
        var four = new CountDownLatch(4);
        centre.whileAnswering = () -> {
            four.countDown();
            try {
                four.await(500, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        };
        ExecutorService hands = Executors.newFixedThreadPool(12);
        try {
            List<Future<Attempt>> sent = IntStream.range(0, 12)
                    .mapToObj(i -> hands.submit(() -> send("text " + i)))
                    .toList();
            for (Future<Attempt> one : sent) {
                assertThat(one.get().outcome()).isEqualTo(Outcome.ACCEPTED);
            }
        } finally {
            hands.shutdownNow();
        }

        assertThat(centre.most.get()).isEqualTo(3);
    }

    @Test
    void closed_it_finishes_what_is_under_way_and_takes_its_leave() throws Exception {
        var asked = new CountDownLatch(1);
        var answer = new CountDownLatch(1);
        centre.whileAnswering = () -> {
            asked.countDown();
            try {
                answer.await(10, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        };
        ExecutorService hands = Executors.newFixedThreadPool(2);
        try {
            Future<Attempt> sent = hands.submit(() -> send());
            assertThat(asked.await(10, TimeUnit.SECONDS)).isTrue();
            Future<?> closing = hands.submit(channel::close);
            await().atMost(10, TimeUnit.SECONDS).until(() -> channel.knock().isPresent());
            answer.countDown();

            assertThat(sent.get().outcome()).isEqualTo(Outcome.ACCEPTED);
            closing.get();
            assertThat(send().detail()).isEqualTo("the channel is closed");
        } finally {
            hands.shutdownNow();
        }
    }
}
