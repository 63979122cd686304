package yardlight.channels.oauth;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A token endpoint of the JDK's own server that answers what it is told. */
public final class StandInEndpoint implements AutoCloseable {

    /** What it was asked: the fields of the form, and who asked. */
    public record Asked(Map<String, String> form, String authorization) {}

    public final List<Asked> asked = new CopyOnWriteArrayList<>();
    private final HttpServer server;
    private volatile int status = 200;
    private volatile String body = "";

    public StandInEndpoint() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/token", this::answer);
        server.start();
    }

    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/token");
    }

    public void says(int answer, String words) {
        status = answer;
        body = words;
    }

    private void answer(HttpExchange exchange) throws IOException {
        String form = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.US_ASCII);
        asked.add(new Asked(
                Stream.of(form.split("&"))
                        .map(field -> field.split("=", 2))
                        .collect(Collectors.toMap(field -> field[0], field -> decoded(field[1]))),
                String.valueOf(exchange.getRequestHeaders().getFirst("Authorization"))));
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().add("Content-Type", "application/json");
        exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
