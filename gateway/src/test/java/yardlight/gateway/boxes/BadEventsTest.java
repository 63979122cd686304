package yardlight.gateway.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import yardlight.db.boxkey.BoxKey;
import yardlight.db.boxkey.BoxKeys;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;
import yardlight.gateway.TestGateway;

@GatewayTest
class BadEventsTest {

    private static final String GOOD = "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\"}";

    private final MockMvcTester mvc;
    private final FakeLane lane;

    BadEventsTest(MockMvcTester mvc, FakeLane lane, BoxKeys keys) {
        this.mvc = mvc;
        this.lane = lane;
        if (keys.of("mesa-9-box").isEmpty()) {
            keys.add(new BoxKey("k1", "mesa-9-box", KeyRing.hash("the-key"), TestGateway.NOW, Optional.empty()));
        }
    }

    @BeforeEach
    void forget() {
        lane.clear();
    }

    @Test
    void are_taken_when_they_are_good() {
        MvcTestResult result = post("application/json", GOOD);
        System.out.println(result.getResponse().getStatus());
        assertThat(result).hasStatus(202);
        assertThat(result).bodyJson().extractingPath("$.results[0].outcome").isEqualTo("occurred");
    }

    private MvcTestResult post(String type, String body) {
        return mvc.post()
                .uri("/api/v1/events")
                .header("Authorization", "Bearer the-key")
                .contentType(type)
                .content(body)
                .exchange();
    }
}
