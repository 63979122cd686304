package yardlight.demo.gateway;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One way into the gateway: an address and what is shown at the door. */
final class Door {

    private static final Duration PATIENCE = Duration.ofSeconds(20);

    /** A setup of a hundred thousand boxes is not read in a moment. */
    private static final Duration PATIENCE_FOR_MUCH = Duration.ofMinutes(3);

    private static final HttpClient HTTP = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(Duration.ofSeconds(5))
            .build();
    private static final JsonMapper JSON = JsonMapper.shared();

    private final URI gateway;
    private final String authorization;

    Door(URI gateway, String authorization) {
        this.gateway = gateway;
        this.authorization = authorization;
    }

    HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    HttpResponse<String> post(String path, Object body) {
        return send(request(path)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(JSON.writeValueAsString(body))));
    }

    HttpResponse<String> put(String path, String type, String body) {
        return send(request(path)
                .timeout(PATIENCE_FOR_MUCH)
                .header("Content-Type", type)
                .PUT(BodyPublishers.ofString(body)));
    }

    /** The body of an answer that must have had this status. */
    static JsonNode expect(int status, HttpResponse<String> answer) {
        if (answer.statusCode() != status) {
            throw new IllegalStateException(answer.request().method() + " " + answer.uri() + " was answered with "
                    + answer.statusCode() + " instead of " + status + ": " + answer.body());
        }
        return answer.body().isBlank() ? JSON.nullNode() : JSON.readTree(answer.body());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(gateway.resolve(path))
                .timeout(PATIENCE)
                .header("Authorization", authorization)
                .header("Accept", "application/json, application/problem+json");
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return HTTP.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for the gateway", e);
        }
    }
}
