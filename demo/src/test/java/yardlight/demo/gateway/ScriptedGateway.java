package yardlight.demo.gateway;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

/** Stands in for the gateway: gives the answers that a test has laid out, in order, and remembers what was asked. */
public final class ScriptedGateway implements AutoCloseable {

    /** What was asked. */
    public record Asked(String method, String path, String authorization, String cookie, String body) {}

    private record Laid(int status, Map<String, String> headers, String body) {}

    private final HttpServer server;
    private final Deque<Laid> answers = new ArrayDeque<>();
    private final List<Asked> asked = new CopyOnWriteArrayList<>();

    public ScriptedGateway() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.createContext("/", this::answer);
        server.start();
    }

    public URI address() {
        return URI.create("http://localhost:" + port());
    }

    public int port() {
        return server.getAddress().getPort();
    }

    public ScriptedGateway answers(int status, String body) {
        return answers(status, Map.of(), body);
    }

    public synchronized ScriptedGateway answers(int status, Map<String, String> headers, String body) {
        answers.add(new Laid(status, headers, body));
        return this;
    }

    public List<Asked> asked() {
        return asked;
    }

    private synchronized void answer(HttpExchange exchange) throws IOException {
        String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
        asked.add(new Asked(
                exchange.getRequestMethod(),
                exchange.getRequestURI().toString(),
                exchange.getRequestHeaders().getFirst("Authorization"),
                exchange.getRequestHeaders().getFirst("Cookie"),
                body));
        Laid laid = answers.isEmpty() ? new Laid(500, Map.of(), "no answer was laid out") : answers.poll();
        laid.headers().forEach(exchange.getResponseHeaders()::set);
        byte[] bytes = laid.body().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(laid.status(), bytes.length == 0 ? -1 : bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
