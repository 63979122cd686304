package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LossesTest {

    @Test
    void are_thought_possible_before_anything_was_heard() {
        assertThat(Losses.NONE.chance(1)).isEqualTo(0.5);
        assertThat(Losses.NONE.unlikely(1e-6, 30)).isEqualTo(30);
    }

    @Test
    void that_are_independent_come_in_rows_as_often_as_they_should() {
        Losses losses = after(20_000, 0.2, 0.2);

        for (int row = 1; row <= 9; row++) {
            assertThat(losses.chance(row)).isBetween(Math.pow(0.2, row) * 0.5, Math.pow(0.2, row) * 4);
        }
    }

    @Test
    void that_come_in_rows_are_found_to() {
        Losses rows = after(20_000, 0.05, 0.8);
        Losses single = after(20_000, 0.2, 0.2);

        assertThat(rows.chance(9)).isGreaterThan(100 * single.chance(9));
    }

    @Test
    void are_forgotten_after_about_a_thousand_heartbeats() {
        Losses losses = after(5_000, 0.3, 0.3);
        double before = losses.lost() / losses.heard();
        for (int i = 0; i < 1_000; i++) {
            losses = losses.next(0);
        }

        assertThat(losses.lost() / losses.heard()).isCloseTo(before / Math.E, within(before * 0.05));
        assertThat(losses.heard()).isLessThanOrEqualTo(1_000);
    }

    @Test
    void get_no_likelier_with_each_in_a_row() {
        Losses losses = after(300, 0.1, 0.3);

        for (int row = 0; row < 30; row++) {
            assertThat(losses.chance(row + 1)).isLessThan(losses.chance(row));
            assertThat(losses.unlikely(losses.chance(row), 40)).isEqualTo(row);
        }
    }

    @Test
    void must_be_counts() {
        assertThatThrownBy(() -> new Losses(1, -1, 0)).hasMessage("losses must be counts: 1.0 -1.0 0.0");
        assertThatThrownBy(() -> new Losses(Double.NaN, 0, 0)).hasMessageStartingWith("losses must be counts");
    }

    /**
     * @param begins chance that a row begins
     * @param goesOn chance that one goes on
     */
    private static Losses after(int heartbeats, double begins, double goesOn) {
        var random = new Random(1);
        Losses losses = Losses.NONE;
        for (int i = 0; i < heartbeats; i++) {
            int missed = 0;
            while (random.nextDouble() < (missed == 0 ? begins : goesOn)) {
                missed++;
            }
            losses = losses.next(missed);
        }
        return losses;
    }
}
