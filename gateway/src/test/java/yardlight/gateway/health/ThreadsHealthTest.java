package yardlight.gateway.health;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.Status;
import yardlight.gateway.clock.Pulse;
import yardlight.gateway.clock.Pulsing;

class ThreadsHealthTest {

    private final Pulse lane = new Pulse("lane");
    private final Pulse due = new Pulse("due");

    @Test
    void is_up_while_every_thread_moves() {
        lane.watch(Thread.currentThread());
        due.watch(Thread.currentThread());

        assertThat(health().getStatus()).isEqualTo(Status.UP);
    }

    @Test
    void is_down_and_says_why_when_one_has_ended() {
        lane.watch(Thread.currentThread());
        due.watch(new Thread(() -> {}));

        assertThat(health().getStatus()).isEqualTo(Status.DOWN);
        assertThat(health().getDetails()).containsOnlyKeys("due");
    }

    private Health health() {
        var beans = new StaticListableBeanFactory();
        beans.addBean("lane", (Pulsing) () -> lane);
        beans.addBean("due", (Pulsing) () -> due);
        return new ThreadsHealth(beans.getBeanProvider(Pulsing.class)).health();
    }
}
