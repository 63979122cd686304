package yardlight.gateway.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import yardlight.db.alarm.Alarms;
import yardlight.db.proof.KnownLines;
import yardlight.escalation.Fixtures;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;
import yardlight.gateway.problem.Problem;

/** What is said to those whose turn does not come: the question that is under way here does not end before theirs does. */
@GatewayTest
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class CoveragesBusyTest {

    private static final Instant NOW = TestGateway.NOW;

    private final Coverages coverages;

    CoveragesBusyTest(Alarms alarms, KnownLines lines) {
        this.coverages =
                new Coverages(Fixtures::theSetup, alarms, lines, InstantSource.fixed(NOW), Duration.ofMillis(20));
    }

    private <T> T ask(Supplier<T> meanwhile) {
        return coverages.ask(NOW, NOW.plus(Duration.ofDays(1)), found -> meanwhile.get());
    }

    @Test
    void a_question_is_to_be_asked_again_later() {
        assertThatThrownBy(() -> ask(() -> ask(() -> "second"))).isInstanceOfSatisfying(Problem.class, problem -> {
            assertThat(problem.status().value()).isEqualTo(503);
            assertThat(problem.headers()).containsKey("Retry-After");
        });
        assertThat(ask(() -> "next")).isEqualTo("next");
    }

    @Test
    void an_edit_goes_on_and_nothing_was_looked_for() {
        assertThat(ask(() -> coverages.opened(Setup.EMPTY, CoveragesTest.ONLY_ANA))
                        .nothing())
                .isTrue();
        assertThat(coverages.opened(Setup.EMPTY, CoveragesTest.ONLY_ANA).nothing())
                .isFalse();
    }
}
