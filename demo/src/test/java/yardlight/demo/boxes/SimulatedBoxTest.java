package yardlight.demo.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.demo.gateway.BoxDoor;
import yardlight.demo.gateway.ScriptedGateway;

class SimulatedBoxTest {

    private static final String HEARD = "{\"received\": \"2026-11-25T08:13:00Z\", \"next\": \"PT5M\"}";
    private static final String TAKEN =
            "{\"received\": \"2026-11-25T08:13:00Z\", \"results\": [{\"outcome\": \"occurred\", \"alarm\": \"a\"}]}";
    private static final Map<String, Object> TANK = Map.of("point", "water-tank");

    private final ScriptedGateway gateway = new ScriptedGateway();
    private final InstantSource clock = InstantSource.fixed(Instant.parse("2026-11-25T08:13:00Z"));

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void posts_what_happens_at_once() {
        gateway.answers(202, TAKEN);

        assertThat(box(true).post(TANK)).map(BoxDoor.Result::outcome).contains("occurred");
    }

    @Test
    void keeps_what_happens_while_its_link_is_broken_and_posts_it_with_the_time_once_it_is_mended() {
        SimulatedBox box = box(true);
        box.link(false);
        assertThat(box.post(TANK)).isEmpty();
        assertThat(box.heartbeat()).isEmpty();
        assertThat(box.kept()).isEqualTo(1);

        gateway.answers(202, HEARD).answers(202, TAKEN);
        box.link(true);

        assertThat(box.kept()).isZero();
        assertThat(gateway.asked())
                .extracting(ScriptedGateway.Asked::path)
                .containsExactly("/api/v1/heartbeats", "/api/v1/events");
        assertThat(gateway.asked().get(1).body())
                .contains("\"point\":\"water-tank\"", "\"at\":\"2026-11-25T08:13:00Z\"");
    }

    @Test
    void says_at_once_that_a_feed_is_off() {
        gateway.answers(202, HEARD);

        box(true).feed("pump", false);

        assertThat(gateway.asked())
                .singleElement()
                .satisfies(asked -> assertThat(asked.body()).contains("\"pump\":false"));
    }

    @Test
    void is_dead_without_a_battery_while_its_own_feed_is_off() {
        SimulatedBox box = box(false);

        box.feed("wells", false);

        assertThat(box.heartbeat()).isEmpty();
        assertThat(box.post(TANK)).isEmpty();
        assertThat(gateway.asked()).isEmpty();
    }

    @Test
    void knows_only_its_own_feeds() {
        assertThatThrownBy(() -> box(true).feed("house", false)).isInstanceOf(IllegalArgumentException.class);
    }

    private SimulatedBox box(boolean battery) {
        SimulatedBox box = new SimulatedBox("mesa-9-box", battery, List.of("wells", "pump"), clock);
        box.connect(new BoxDoor(gateway.address(), "k"));
        return box;
    }
}
