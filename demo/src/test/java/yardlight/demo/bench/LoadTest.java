package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import yardlight.demo.gateway.ScriptedGateway;

class LoadTest {

    private static final byte[] POST = HttpConnection.post("/api/v1/events", "k-1", "{\"state\":\"active\"}");

    private final ScriptedGateway gateway = new ScriptedGateway();

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void counts_answers_by_status_until_there_are_no_more_requests() throws Exception {
        gateway.answers(202, "{}")
                .answers(202, "")
                .answers(422, "{\"title\":\"no\"}")
                .answers(202, "{}");

        Load.Round round = new Load(gateway.port(), 2, Duration.ofSeconds(30))
                .run((connection, number) -> number < 2 ? POST : null);

        assertThat(round.answers()).isEqualTo(Map.of(202, 3, 422, 1));
        assertThat(round.nanos()).hasSize(4);
        assertThat(gateway.asked()).allSatisfy(asked -> {
            assertThat(asked.authorization()).isEqualTo("Bearer k-1");
            assertThat(asked.body()).isEqualTo("{\"state\":\"active\"}");
        });
    }

    @Test
    void ends_when_its_time_is_up() throws Exception {
        for (int i = 0; i < 50_000; i++) {
            gateway.answers(202, "{}");
        }

        Load.Round round = new Load(gateway.port(), 1, Duration.ofMillis(50)).run((connection, number) -> POST);

        assertThat(round.nanos().length).isBetween(1, 49_999);
        assertThat(round.perSecond(202)).isPositive();
    }

    @Test
    void gives_no_figure_when_some_answers_were_not_what_was_measured() {
        Load.Round round = new Load.Round(Map.of(202, 9, 429, 1), new long[10], 1.0);

        assertThatThrownBy(() -> round.perSecond(202))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("429=1");
    }
}
