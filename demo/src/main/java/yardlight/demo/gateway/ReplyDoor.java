package yardlight.demo.gateway;

import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API as a provider uses it that hands in the texts which people send. */
public final class ReplyDoor {

    private final Door door;

    public ReplyDoor(URI gateway, String key) {
        door = new Door(gateway, "Bearer " + key);
    }

    /** Hands in a text and gives the line that its sender would get back, or what went wrong, in one line. */
    public String reply(String from, String text) {
        try {
            return line(door.post("/api/v1/replies", Map.of("from", from, "text", text)));
        } catch (UncheckedIOException e) {
            return "The gateway does not answer.";
        }
    }

    private static String line(HttpResponse<String> answer) {
        try {
            JsonNode body = JsonMapper.shared().readTree(answer.body());
            for (String member : new String[] {"answer", "detail", "title"}) {
                if (body.path(member).isString()) {
                    return body.path(member).asString();
                }
            }
        } catch (JacksonException plain) {
            // not JSON: shown as it came
        }
        return answer.body().isBlank()
                ? "Answered with " + answer.statusCode() + "."
                : answer.body().strip();
    }
}
