package yardlight.demo.outside;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * An alarm as the API shows it.
 *
 * @param events how many the gateway has counted for it
 * @param notices states of its notices
 */
record Seen(int events, List<String> notices) {

    private static final List<String> GONE_OUT = List.of("handed-over", "delivered");

    /** All alarms by site, at most the newest thousand. */
    static Map<String, Seen> all(int port) throws IOException, InterruptedException {
        var seen = new HashMap<String, Seen>();
        for (JsonNode alarm : Http.get(port, "/api/v1/alarms")) {
            List<String> notices = alarm.path("callout")
                    .path("notices")
                    .valueStream()
                    .map(notice -> notice.path("state").asString())
                    .toList();
            seen.put(
                    alarm.path("site").asString(),
                    new Seen(alarm.path("repeats").asInt() + 1, notices));
        }
        return seen;
    }

    /** Whether somebody was told, as far as the gateway knows. */
    boolean told() {
        return !notices.isEmpty() && GONE_OUT.containsAll(notices);
    }
}
