package yardlight.escalation.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class LineHealthTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    private final LineHealth line = LineHealth.unknown(new LineHealth.Key("ana", "mail", "ana@mesa.example"));

    @Test
    void that_a_carrier_took_something_proves_nothing() {
        assertThat(line.handedOver(NOW).proven(NOW)).isFalse();
        assertThat(line.handedOver(NOW).provenAt()).isEmpty();
    }

    @Test
    void a_receipt_and_an_answer_prove_it_and_the_newer_one_counts() {
        LineHealth both = line.delivered(NOW.minusSeconds(60)).answered(NOW);

        assertThat(line.delivered(NOW).proven(NOW)).isTrue();
        assertThat(both.provenAt()).contains(NOW);
    }

    @Test
    void a_proof_lasts_for_thirty_days_and_not_a_moment_longer() {
        LineHealth proven = line.answered(NOW);
        Instant end = NOW.plus(Duration.ofDays(30));

        assertThat(proven.proven(end.minusNanos(1))).isTrue();
        assertThat(proven.proven(end)).isFalse();
    }

    @Test
    void trouble_takes_no_proof_away() {
        assertThat(line.answered(NOW).troubled(NOW, "550 no such user").proven(NOW))
                .isTrue();
    }

    @Test
    void an_answer_closes_the_test() {
        var test = new LineHealth.Test("n", 2, NOW, false);

        assertThat(test.open(NOW.plus(Duration.ofHours(24)).minusNanos(1))).isTrue();
        assertThat(test.open(NOW.plus(Duration.ofHours(24)))).isFalse();
        assertThat(line.tested(test).answered(NOW).test().orElseThrow().open(NOW))
                .isFalse();
    }

    @Test
    void words_without_end_are_cut() {
        assertThat(line.troubled(NOW, "x".repeat(5_000)).trouble().orElseThrow().words())
                .hasSize(500);
    }
}
