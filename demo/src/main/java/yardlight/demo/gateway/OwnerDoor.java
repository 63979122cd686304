package yardlight.demo.gateway;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The API as the owner uses it. Anything but the expected answer is an {@link IllegalStateException}. */
public final class OwnerDoor {

    public static final String LOGIN = "owner";

    private final Door door;

    public OwnerDoor(URI gateway, String password) {
        byte[] login = (LOGIN + ":" + password).getBytes(StandardCharsets.UTF_8);
        door = new Door(gateway, "Basic " + Base64.getEncoder().encodeToString(login));
    }

    /**
     * @param yaml the whole setup document
     */
    public void putSetup(String yaml) {
        put("application/yaml", yaml);
    }

    /**
     * @param json the whole setup document
     */
    public void putSetupAsJson(String json) {
        put("application/json", json);
    }

    private void put(String type, String document) {
        var answer = door.put("/api/v1/setup", type, document);
        if (answer.statusCode() / 100 != 2) {
            throw new IllegalStateException(
                    "the setup was answered with " + answer.statusCode() + ": " + answer.body());
        }
    }

    /** A new key for a box. */
    public String newKey(String box) {
        return Door.expect(201, door.post("/api/v1/boxes/" + box + "/keys", java.util.Map.of()))
                .get("key")
                .asString();
    }

    public AlarmView alarm(String id) {
        return AlarmView.of(Door.expect(200, door.get("/api/v1/alarms/" + encoded(id))));
    }

    public List<AlarmView> alarmsAt(String site) {
        JsonNode answer = Door.expect(200, door.get("/api/v1/alarms?site=" + encoded(site)));
        JsonNode list = answer.isArray() ? answer : answer.path("alarms");
        return list.valueStream().map(AlarmView::of).toList();
    }

    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
