package yardlight.channels.http;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A provider on the JDK's own HTTP server. It takes everything unless told otherwise. */
final class StandInProvider implements AutoCloseable {

    /** What came in. */
    record Asked(String method, String target, Headers headers, String body) {

        String header(String name) {
            return headers.getFirst(name);
        }
    }

    /** A status of 0 hangs up without an answer. */
    record Said(int status, Map<String, String> headers, String body) {}

    private final HttpServer server;
    private final ExecutorService hands = Executors.newCachedThreadPool();
    private volatile Said said = new Said(202, Map.of(), "taken");
    private volatile boolean away;

    /** Messages that were taken or may have been. */
    final List<Asked> messages = new CopyOnWriteArrayList<>();

    final List<Asked> everything = new CopyOnWriteArrayList<>();

    StandInProvider() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
        server.setExecutor(hands);
        server.createContext("/", this::serve);
        server.start();
    }

    String url(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    StandInProvider says(int status, String body) {
        return says(status, Map.of(), body);
    }

    StandInProvider says(int status, Map<String, String> headers, String body) {
        said = new Said(status, headers, body);
        return this;
    }

    StandInProvider hangsUp() {
        return says(0, "");
    }

    /** Takes nothing from anybody. */
    void isAway() {
        away = true;
    }

    /** Nobody is there any more. */
    @Override
    public void close() {
        server.stop(0);
        hands.shutdownNow();
    }

    private void serve(HttpExchange exchange) throws IOException {
        try (exchange) {
            String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
            var asked = new Asked(
                    exchange.getRequestMethod(),
                    exchange.getRequestURI().toString(),
                    exchange.getRequestHeaders(),
                    body);
            everything.add(asked);
            if (away) {
                answer(exchange, new Said(503, Map.of(), "away"));
                return;
            }
            boolean message = !asked.method().equals("OPTIONS");
            Said now = message ? said : new Said(204, Map.of(), "");
            if (message && (now.status() == 0 || now.status() / 100 == 2)) {
                messages.add(asked);
            }
            if (now.status() != 0) {
                answer(exchange, now);
            }
        }
    }

    private static void answer(HttpExchange exchange, Said now) throws IOException {
        byte[] body = now.body().getBytes(StandardCharsets.UTF_8);
        now.headers().forEach(exchange.getResponseHeaders()::set);
        exchange.sendResponseHeaders(now.status(), body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
    }
}
