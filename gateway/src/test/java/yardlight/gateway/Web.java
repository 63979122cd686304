package yardlight.gateway;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Speaks HTTP to a gateway as curl would: no redirects, no cookies, nothing added. */
public record Web(int port) {

    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static final JsonMapper JSON = JsonMapper.builder().build();

    public HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    public HttpResponse<String> post(String path, String type, String body, String... headers) {
        return send(request(path, headers).header("Content-Type", type).POST(BodyPublishers.ofString(body)));
    }

    public HttpResponse<String> put(String path, String type, String body, String... headers) {
        return send(request(path, headers).header("Content-Type", type).PUT(BodyPublishers.ofString(body)));
    }

    public HttpResponse<String> call(String method, String path, String... headers) {
        return send(request(path, headers).method(method, BodyPublishers.noBody()));
    }

    public static JsonNode json(HttpResponse<String> response) {
        return JSON.readTree(response.body());
    }

    /** The two words for {@code headers} that sign in. */
    public static String[] owner() {
        return new String[] {"Authorization", Doors.basic("owner")};
    }

    private HttpRequest.Builder request(String path, String... headers) {
        var builder = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
        return headers.length == 0 ? builder : builder.headers(headers);
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
