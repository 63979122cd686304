package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class OwnerDoorTest {

    private static final String ALARM = """
            {"id": "mesa-9.water-tank.high-high.1", "site": "mesa-9", "point": "water-tank", "condition": "high-high",
             "state": "acknowledged", "acknowledgedBy": "ben",
             "callout": {"state": "answered", "notices": [
               {"id": "n1", "contact": "ida", "state": "held", "heldUntil": "2026-11-25T12:00:00Z"},
               {"id": "n2", "contact": "ben", "state": "handed-over", "heldUntil": null}]}}""";

    private final ScriptedGateway gateway = new ScriptedGateway();
    private final OwnerDoor door = new OwnerDoor(gateway.address(), "secret");

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void puts_the_setup_as_the_owner() {
        gateway.answers(204, "");

        door.putSetup("sites: []");

        assertThat(gateway.asked()).singleElement().satisfies(asked -> {
            assertThat(asked.method() + " " + asked.path()).isEqualTo("PUT /api/v1/setup");
            assertThat(asked.authorization()).isEqualTo("Basic b3duZXI6c2VjcmV0"); // owner:secret
            assertThat(asked.body()).isEqualTo("sites: []");
        });
    }

    @Test
    void says_what_is_wrong_with_the_setup() {
        gateway.answers(422, "{\"errors\": [{\"pointer\": \"#/sites/0/ladder\"}]}");

        assertThatThrownBy(() -> door.putSetup("sites: [{}]"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("#/sites/0/ladder");
    }

    @Test
    void makes_a_key_for_a_box() {
        gateway.answers(201, "{\"id\": \"7\", \"key\": \"k-abc\"}");

        assertThat(door.newKey("mesa-9-box")).isEqualTo("k-abc");
        assertThat(gateway.asked().get(0).path()).isEqualTo("/api/v1/boxes/mesa-9-box/keys");
    }

    @Test
    void reads_an_alarm_with_its_callout() {
        gateway.answers(200, ALARM);

        AlarmView alarm = door.alarm("mesa-9.water-tank.high-high.1");

        assertThat(alarm.acknowledgedBy()).contains("ben");
        assertThat(alarm.callout()).contains("answered");
        assertThat(alarm.heldUntil()).contains(Instant.parse("2026-11-25T12:00:00Z"));
        assertThat(alarm.notices()).isEqualTo(2);
    }
}
