package yardlight.channels.push;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A push service with one subscription, that of {@link Browser}, on the JDK's own HTTP server. */
public final class StandInService implements AutoCloseable {

    /**
     * What came in for the browser.
     *
     * @param note as the browser reads it
     */
    public record Pushed(String target, Headers headers, int length, String note) {

        public String header(String name) {
            return headers.getFirst(name);
        }
    }

    private final HttpServer server;
    private final ExecutorService hands = Executors.newCachedThreadPool();
    private volatile int status = 201;
    private volatile Map<String, String> headers = Map.of();
    private volatile String words = "";
    private volatile boolean away;

    /** What was taken or may have been. */
    public final List<Pushed> pushed = new CopyOnWriteArrayList<>();

    public StandInService() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
        server.setExecutor(hands);
        server.createContext("/", this::serve);
        server.start();
    }

    String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** The address of a line that leads to the browser. */
    public String subscription() {
        return origin() + "/p/JzLQ3raZJfFBR0aqvOMsLrt54w4rJUsV|" + Browser.KEY + "|" + Browser.SECRET;
    }

    /** @param code 0 hangs up without an answer */
    void says(int code, Map<String, String> more, String body) {
        status = code;
        headers = more;
        words = body;
    }

    void isAway() {
        away = true;
    }

    @Override
    public void close() {
        server.stop(0);
        hands.shutdownNow();
    }

    private void serve(HttpExchange exchange) throws IOException {
        try (exchange) {
            byte[] body = exchange.getRequestBody().readAllBytes();
            if (away) {
                answer(exchange, 503, Map.of(), "away");
            } else if (exchange.getRequestMethod().equals("OPTIONS")) {
                answer(exchange, 405, Map.of(), "");
            } else {
                push(exchange, body);
            }
        } catch (GeneralSecurityException e) {
            throw new IOException(e);
        }
    }

    private void push(HttpExchange exchange, byte[] body) throws IOException, GeneralSecurityException {
        if (status == 0 || status / 100 == 2) {
            Token.in(exchange.getRequestHeaders().getFirst("Authorization"));
            pushed.add(new Pushed(
                    exchange.getRequestURI().toString(),
                    exchange.getRequestHeaders(),
                    body.length,
                    new String(Browser.open(body), StandardCharsets.UTF_8)));
        }
        if (status != 0) {
            answer(exchange, status, headers, words);
        }
    }

    private static void answer(HttpExchange exchange, int code, Map<String, String> more, String words)
            throws IOException {
        byte[] body = words.getBytes(StandardCharsets.UTF_8);
        more.forEach(exchange.getResponseHeaders()::set);
        exchange.sendResponseHeaders(code, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
    }
}
