package yardlight.gateway.dispatch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attempt;
import yardlight.channels.Message;
import yardlight.db.outbox.Outgoing;
import yardlight.escalation.Stimulus;
import yardlight.escalation.Stimulus.Fate;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.gateway.lane.Tried;

class JudgementTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void tells_the_engine_what_was_taken_and_what_was_refused_and_by_which_channel() {
        assertThat(judged(0, 0, Attempt.accepted("250 taken")).fate())
                .contains(new Stimulus.NoticeFate(
                        "n-1", 0, Fate.HANDED_OVER, "sms-mail: 250 taken", Optional.of(Duration.ofMinutes(2))));
        assertThat(judged(0, 0, Attempt.refused("550 no")).fate())
                .contains(new Stimulus.NoticeFate("n-1", 0, Fate.REFUSED, "sms-mail: 550 no"));
    }

    @Test
    void waits_5_15_and_30_seconds_and_then_a_minute_each_time() {
        List<Long> waits = IntStream.range(0, 6)
                .mapToObj(deferrals -> judged(deferrals, 0, Attempt.deferred("451 later")))
                .map(tried ->
                        Duration.between(NOW, tried.retry().orElseThrow().at()).toSeconds())
                .toList();

        assertThat(waits).containsExactly(5L, 15L, 30L, 60L, 60L, 60L);
    }

    @Test
    void waits_longer_when_the_other_side_asks_for_it() {
        Tried tried = judged(0, 0, Attempt.deferred("slow down", Duration.ofMinutes(3)));

        assertThat(tried.retry().orElseThrow().at()).isEqualTo(NOW.plus(Duration.ofMinutes(3)));
        assertThat(tried.fate()).isEmpty();
    }

    @Test
    void does_not_wait_past_the_next_rung() {
        Instant rung = NOW.plusSeconds(40);

        assertThat(again(5, Attempt.deferred("451 later"), rung)).isEqualTo(rung);
        assertThat(again(2, Attempt.deferred("451 later"), rung)).isEqualTo(NOW.plusSeconds(30));
        assertThat(again(0, Attempt.deferred("slow down", Duration.ofHours(1)), rung))
                .isEqualTo(rung);
        assertThat(again(5, Attempt.deferred("451 later"), NOW.plusMillis(1))).isEqualTo(NOW.plusSeconds(1));
        assertThat(again(0, Attempt.unknown("no answer"), NOW.plusSeconds(3))).isEqualTo(NOW.plusSeconds(3));
    }

    private static Instant again(int deferrals, Attempt attempt, Instant rung) {
        return judged(deferrals, 0, attempt, Optional.of(rung))
                .retry()
                .orElseThrow()
                .at();
    }

    @Test
    void puts_off_the_line_that_was_tried_and_no_other() {
        assertThat(judged(0, 0, Attempt.deferred("451 later"))
                        .retry()
                        .orElseThrow()
                        .since())
                .isEqualTo(NOW.minusSeconds(7));
    }

    @Test
    void counts_how_often_it_was_put_off_and_doubted() {
        assertThat(judged(2, 0, Attempt.deferred("451 later"))
                        .retry()
                        .orElseThrow()
                        .deferrals())
                .isEqualTo(3);
        assertThat(judged(2, 0, Attempt.unknown("no answer"))
                        .retry()
                        .orElseThrow()
                        .doubts())
                .isEqualTo(1);
    }

    @Test
    void sends_once_more_when_nobody_knows_and_then_tells_the_engine_with_the_doubt() {
        Tried first = judged(0, 0, Attempt.unknown("no answer"));
        Tried second = judged(0, 1, Attempt.unknown("no answer"));

        assertThat(first.fate()).isEmpty();
        assertThat(first.retry()).isPresent();
        assertThat(second.retry()).isEmpty();
        assertThat(second.fate())
                .hasValueSatisfying(fate -> assertThat(fate.fate()).isEqualTo(Fate.UNCERTAIN))
                .hasValueSatisfying(fate -> assertThat(fate.detail()).contains("may not have been taken"));
    }

    @Test
    void gives_a_notice_with_a_long_id_a_shorter_identity_that_is_always_the_same() {
        String id = "site.point.condition.1.".repeat(12);

        String outside = MessageIds.of(id);

        assertThat(outside).isEqualTo(MessageIds.of(id)).isNotEqualTo(MessageIds.of(id + "x"));
        assertThat(new Message(outside, "a", "b", NOW).id()).isEqualTo(outside);
        assertThat(MessageIds.of("short.1")).isEqualTo("short.1");
    }

    private static Tried judged(int deferrals, int doubts, Attempt attempt) {
        return judged(deferrals, doubts, attempt, Optional.empty());
    }

    private static Tried judged(int deferrals, int doubts, Attempt attempt, Optional<Instant> nextRung) {
        var notice = new Notice(
                "n-1",
                "ana",
                List.of("c-1"),
                Priority.HIGH,
                "MESA 9 WATER TANK HIGH-HIGH",
                NoticeState.QUEUED,
                NOW,
                Optional.empty(),
                Optional.empty(),
                0);
        var sent = new Outgoing(notice, "sms-mail", NOW.minusSeconds(7), deferrals, doubts);
        return new Judgement(sent, "sms-mail", NOW, Optional.of(Duration.ofMinutes(2)), any -> nextRung).of(attempt);
    }
}
