package yardlight.demo.gateway;

import java.net.URI;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** The API as a box uses it, with the box's key. What is refused for a while is posted again, as boxes do. */
public final class BoxDoor {

    private static final int TRIES = 5;

    /**
     * @param outcome what the event did, in the words of the contract
     * @param alarm id of the alarm, empty if there is none
     */
    public record Result(String outcome, String alarm) {}

    /**
     * @param received the gateway's time when the question reached it, long before it was answered from disk
     * @param nanos this machine's {@link System#nanoTime()} when it was asked
     */
    public record Beat(Instant received, long nanos) {}

    private final Door door;

    public BoxDoor(URI gateway, String key) {
        door = new Door(gateway, "Bearer " + key);
    }

    /**
     * Posts events in one go.
     *
     * @param events each with the fields of the contract
     * @return one result for each
     */
    public List<Result> events(List<Map<String, Object>> events) {
        JsonNode answer = Door.expect(202, posted("/api/v1/events", events));
        return answer.get("results").valueStream().map(BoxDoor::result).toList();
    }

    private static Result result(JsonNode result) {
        return new Result(result.get("outcome").asString(), result.path("alarm").asString(""));
    }

    public Beat heartbeat(Map<String, Object> heartbeat) {
        long asked = System.nanoTime();
        JsonNode answer = Door.expect(202, posted("/api/v1/heartbeats", heartbeat));
        return new Beat(Instant.parse(answer.get("received").asString()), asked);
    }

    private HttpResponse<String> posted(String path, Object body) {
        HttpResponse<String> answer = door.post(path, body);
        for (int tries = 1; tries < TRIES && later(answer); tries++) {
            pause(answer.headers().firstValueAsLong("Retry-After").orElse(1));
            answer = door.post(path, body);
        }
        return answer;
    }

    private static boolean later(HttpResponse<String> answer) {
        return answer.statusCode() == 429 || answer.statusCode() == 503;
    }

    private static void pause(long seconds) {
        try {
            Thread.sleep(Math.min(seconds, 5) * 1000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
