package yardlight.demo.gateway;

import java.time.Instant;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * An alarm as the API shows it, as far as the demo looks.
 *
 * @param callout state of its callout, empty when there is none
 * @param heldUntil the earliest time at which a held notice of it goes out
 * @param notices how many notices were made for it
 */
public record AlarmView(
        String id,
        String point,
        String condition,
        String state,
        Optional<String> acknowledgedBy,
        Optional<String> callout,
        Optional<Instant> heldUntil,
        int notices) {

    static AlarmView of(JsonNode alarm) {
        JsonNode callout = alarm.path("callout");
        JsonNode notices = callout.path("notices");
        return new AlarmView(
                alarm.get("id").asString(),
                alarm.get("point").asString(),
                alarm.get("condition").asString(),
                alarm.get("state").asString(),
                word(alarm, "acknowledgedBy"),
                word(callout, "state"),
                notices.valueStream()
                        .filter(notice ->
                                word(notice, "state").filter("held"::equals).isPresent())
                        .flatMap(notice -> word(notice, "heldUntil").stream())
                        .map(Instant::parse)
                        .min(Instant::compareTo),
                notices.size());
    }

    private static Optional<String> word(JsonNode node, String name) {
        JsonNode value = node.path(name);
        return value.isString() ? Optional.of(value.asString()) : Optional.empty();
    }
}
