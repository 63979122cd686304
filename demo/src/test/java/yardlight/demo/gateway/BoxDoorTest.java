package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class BoxDoorTest {

    private static final String TAKEN = """
            {"received": "2026-11-25T08:13:00.5Z",
             "results": [{"outcome": "occurred", "alarm": "mesa-9.water-tank.high-high.1"}, {"outcome": "noted"}]}""";

    private final ScriptedGateway gateway = new ScriptedGateway();
    private final BoxDoor door = new BoxDoor(gateway.address(), "k-1");

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void posts_events_with_the_boxs_key_and_reads_a_result_for_each() {
        gateway.answers(202, TAKEN);

        List<BoxDoor.Result> results = door.events(List.of(Map.of("point", "water-tank"), Map.of("point", "pump")));

        assertThat(results)
                .containsExactly(
                        new BoxDoor.Result("occurred", "mesa-9.water-tank.high-high.1"),
                        new BoxDoor.Result("noted", ""));
        assertThat(gateway.asked()).singleElement().satisfies(asked -> {
            assertThat(asked.path()).isEqualTo("/api/v1/events");
            assertThat(asked.authorization()).isEqualTo("Bearer k-1");
            assertThat(asked.body()).isEqualTo("[{\"point\":\"water-tank\"},{\"point\":\"pump\"}]");
        });
    }

    @Test
    void posts_again_what_was_put_off() {
        gateway.answers(503, Map.of("Retry-After", "0"), "")
                .answers(429, Map.of("Retry-After", "0"), "")
                .answers(202, "{\"received\": \"2026-11-25T08:13:00Z\", \"next\": \"PT5M\"}");

        BoxDoor.Beat beat = door.heartbeat(Map.of("battery", 13.1));

        assertThat(beat.received()).isEqualTo(Instant.parse("2026-11-25T08:13:00Z"));
        assertThat(gateway.asked())
                .hasSize(3)
                .extracting(ScriptedGateway.Asked::body)
                .containsOnly("{\"battery\":13.1}");
    }

    @Test
    void says_what_the_gateway_found_wrong() {
        gateway.answers(422, "{\"title\": \"state must be active or normal\"}");

        assertThatThrownBy(() -> door.events(List.of(Map.of())))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("422 instead of 202")
                .hasMessageContaining("state must be active or normal");
    }
}
