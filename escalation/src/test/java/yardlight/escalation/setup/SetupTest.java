package yardlight.escalation.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

class SetupTest {

    private final Setup setup = Fixtures.theSetup();

    @Test
    void a_point_that_was_set_up_is_known() {
        assertThat(setup.known("mesa-9", "water-tank")).contains(Fixtures.waterTank());
        assertThat(setup.point("mesa-9", "water-tank")).isEqualTo(Fixtures.waterTank());
    }

    @Test
    void a_point_that_nobody_set_up_is_not_known_and_works_all_the_same() {
        assertThat(setup.known("mesa-9", "flow-line-2")).isEmpty();

        Point point = setup.point("mesa-9", "flow-line-2");

        assertThat(point.name()).isEqualTo("FLOW LINE 2");
        assertThat(point.inService()).isTrue();
        assertThat(point.suppressedWhile()).isEmpty();
    }

    @Test
    void the_same_point_of_another_site_is_another_point() {
        assertThat(setup.known("mesa-8", "water-tank")).isEmpty();
    }

    @Test
    void boxes_are_found_by_their_site() {
        assertThat(setup.boxesAt("mesa-9")).containsExactly(Fixtures.aBox());
        assertThat(setup.boxesAt("mesa-8")).isEmpty();
    }

    @Test
    void an_id_that_comes_twice_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Setup(
                        List.of(Fixtures.aSite(), Fixtures.aSite()),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()))
                .withMessage("id must be unique: mesa-9");
    }

    @Test
    void a_box_refuses_heartbeats_without_an_interval_and_grace_below_nothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> box(Duration.ZERO, Duration.ZERO))
                .withMessage("heartbeat every must be positive: PT0S");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> box(Duration.ofMinutes(1), Duration.ofSeconds(-1)))
                .withMessage("heartbeat grace must not be negative: PT-1S");
    }

    private static Box box(Duration every, Duration grace) {
        return new Box("b", "mesa-9", Optional.empty(), Optional.empty(), true, Optional.of(every), grace);
    }
}
