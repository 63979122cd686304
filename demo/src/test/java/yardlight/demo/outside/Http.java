package yardlight.demo.outside;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Plain requests to a gateway, each tried once: what to do about a failure is the caller's affair. */
final class Http {

    private static final HttpClient CLIENT = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(Duration.ofSeconds(2))
            .build();
    private static final String OWNER =
            "Basic " + Base64.getEncoder().encodeToString(("owner:" + Node.PASSWORD).getBytes(StandardCharsets.UTF_8));

    private Http() {}

    /** Posts an event and comes back with the status of the answer. */
    static int event(int port, String key, String event) throws IOException, InterruptedException {
        return post(port, "/api/v1/events", key, event);
    }

    /** Posts a heartbeat and comes back with the status of the answer. */
    static int beat(int port, String key, String beat) throws IOException, InterruptedException {
        return post(port, "/api/v1/heartbeats", key, beat);
    }

    private static int post(int port, String path, String key, String body) throws IOException, InterruptedException {
        return CLIENT.send(
                        to(port, path, "Bearer " + key)
                                .header("Content-Type", "application/json")
                                .POST(BodyPublishers.ofString(body))
                                .build(),
                        BodyHandlers.discarding())
                .statusCode();
    }

    /** What the owner is answered there. */
    static HttpResponse<String> ask(int port, String path) throws IOException, InterruptedException {
        return CLIENT.send(to(port, path, OWNER).GET().build(), BodyHandlers.ofString());
    }

    /** What the owner sees there. */
    static JsonNode get(int port, String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = ask(port, path);
        if (answer.statusCode() != 200) {
            throw new IOException(path + " was answered with " + answer.statusCode() + ": " + answer.body());
        }
        return JsonMapper.shared().readTree(answer.body());
    }

    private static HttpRequest.Builder to(int port, String path, String authorization) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(Duration.ofSeconds(20))
                .header("Authorization", authorization);
    }
}
