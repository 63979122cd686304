package yardlight.gateway.describe;

import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.RequestBody;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The bodies that are read, by address. A name with a star has to be there. */
final class Bodies {

    private static final String JSON = "application/json";

    private static final Schema<?> EVENT = object(
            "point*: text",
            "condition*: text",
            "state*: active or normal",
            "id: text",
            "priority: low, medium, high or critical",
            "value: number",
            "limit: number",
            "unit: text",
            "at: RFC 3339 time",
            "text: text");

    private static final Map<String, RequestBody> KNOWN = Map.of(
            "POST /api/v1/events",
            body(Map.of(
                    JSON,
                    either(EVENT, list(EVENT)),
                    "application/x-ndjson",
                    EVENT,
                    "application/x-www-form-urlencoded",
                    EVENT)),
            "POST /api/v1/heartbeats",
            json("uptime: number", "feeds: object", "battery: number", "signal: number", "at: RFC 3339 time"),
            "POST /api/v1/replies",
            json("from*: text", "text*: text"),
            "PUT /api/v1/setup",
            setup(),
            "PUT /api/v1/logins/{login}",
            json("role*: owner, hand or reader", "contact: text", "password: text"),
            "POST /api/v1/invitations",
            json("role*: owner, hand or reader", "contact: text"),
            "POST /api/v1/alarms/{id}/acknowledge",
            json("contact: text", "note: text"),
            "POST /api/v1/alarms/{id}/shelve",
            json("for*: ISO 8601 duration", "reason*: text"),
            "POST /api/v1/boxes/{box}/keys",
            json("endOthersAfter: ISO 8601 duration"),
            "POST /api/v1/rehearsals",
            json(
                    "site*: text",
                    "point*: text",
                    "condition*: text",
                    "priority: low, medium, high or critical",
                    "at: RFC 3339 time",
                    "answers: list",
                    "setup: object"));

    private static final Schema<?> READING =
            object("point*: text", "value*: number", "unit: text", "at: RFC 3339 time");

    private static final Map<String, RequestBody> MORE = Map.of(
            "POST /api/v1/rehearsals/nights",
            json("from*: RFC 3339 time", "to*: RFC 3339 time", "site: text", "answers: list", "setup: object"),
            "POST /api/v1/alarms/{id}/notes",
            json("note*: text"),
            "POST /api/v1/readings",
            body(Map.of(
                    JSON,
                    either(READING, list(READING)),
                    "application/x-ndjson",
                    READING,
                    "application/x-www-form-urlencoded",
                    READING,
                    "text/csv",
                    of("string", ""))));

    private Bodies() {}

    /** @param address method and path */
    static Optional<RequestBody> of(String address) {
        return Optional.ofNullable(KNOWN.getOrDefault(address, MORE.get(address)));
    }

    private static RequestBody setup() {
        Schema<?> lists = object(
                "sites: list", "boxes: list", "points: list", "contacts: list", "rosters: list", "ladders: list");
        return body(Map.of("application/yaml", lists, JSON, lists));
    }

    private static RequestBody json(String... fields) {
        return body(Map.of(JSON, object(fields)));
    }

    private static RequestBody body(Map<String, Schema<?>> types) {
        var content = new Content();
        types.forEach((type, schema) -> content.addMediaType(type, new MediaType().schema(schema)));
        return new RequestBody().content(content);
    }

    private static Schema<?> object(String... fields) {
        Schema<?> object = of("object", "");
        for (String field : fields) {
            String[] parts = field.split(": ", 2);
            String name = parts[0].replace("*", "");
            object.addProperty(name, field(parts[1]));
            if (parts[0].endsWith("*")) {
                object.addRequiredItem(name);
            }
        }
        return object;
    }

    private static Schema<?> field(String kind) {
        return switch (kind) {
            case "text" -> of("string", "");
            case "number", "object" -> of(kind, "");
            case "list" -> list(of("object", ""));
            default -> of("string", kind);
        };
    }

    private static Schema<?> list(Schema<?> item) {
        Schema<?> list = of("array", "");
        list.setItems(item);
        return list;
    }

    private static Schema<?> either(Schema<?> one, Schema<?> other) {
        return new Schema<>().oneOf(List.of(one, other));
    }

    private static Schema<?> of(String type, String description) {
        Schema<?> schema = new Schema<>();
        schema.setType(type);
        schema.setTypes(java.util.Set.of(type));
        schema.setDescription(description.isEmpty() ? null : description);
        return schema;
    }
}
