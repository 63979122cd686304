package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.gateway.FakeLane;
import yardlight.gateway.lane.LaneBusy;

class SignsOfLifeTest {

    private final FakeLane lane = new FakeLane();
    private final SignsOfLife signs = new SignsOfLife(lane);

    @ParameterizedTest
    @ValueSource(ints = {400, 413, 415, 422, 429})
    void are_heard_in_a_post_that_was_refused(int status) {
        signs.answered("mesa-9-box", status);

        assertThat(lane.signs).containsExactly("mesa-9-box");
        assertThat(lane.heartbeats).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {202, 401, 403, 404, 405, 500, 503})
    void are_not_heard_where_the_post_was_heard_itself_or_was_none(int status) {
        signs.answered("mesa-9-box", status);

        assertThat(lane.signs).isEmpty();
    }

    @Test
    void in_a_flood_of_one_box_are_heard_once_and_those_of_another_as_well() {
        signs.answered("mesa-9-box", 429);
        signs.answered("mesa-9-box", 429);
        signs.answered("cedar-3-box", 429);

        assertThat(lane.signs).containsExactly("mesa-9-box", "cedar-3-box");
    }

    @Test
    void that_cannot_be_stored_leave_the_refusal_as_it_is() {
        lane.trouble = Optional.of(new LaneBusy("full", null));

        signs.answered("mesa-9-box", 422);

        assertThat(lane.signs).isEmpty();
    }
}
