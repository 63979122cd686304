package yardlight.gateway.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.problem.Problem;

/** Pages that are open. */
@GatewayTest
class WatchingTest {

    private final Watching watching;

    WatchingTest(Watching watching) {
        this.watching = watching;
    }

    @Test
    void are_not_taken_while_the_gateway_stops() {
        watching.stop();
        try {
            assertThatThrownBy(watching::join).isInstanceOf(Problem.class);
        } finally {
            watching.start();
        }
    }

    @Test
    void are_taken_up_to_a_number() {
        while (watching.open() < Watching.MOST) {
            watching.join();
        }

        assertThatThrownBy(watching::join).isInstanceOf(Problem.class);
        assertThat(watching.open()).isEqualTo(Watching.MOST);
        watching.stop();
        watching.start();
    }
}
