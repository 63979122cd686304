package yardlight.gateway.arrival;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A sender that takes its time, byte by byte if need be. */
final class Sender implements AutoCloseable {

    private final Socket socket;

    /**
     * Begins a post and leaves its body to {@link #send}.
     *
     * @param more headers, each with its line end; the length of the body or that it comes in chunks is one of them
     */
    Sender(int port, String path, String more) throws IOException {
        socket = new Socket("127.0.0.1", port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(20_000);
        send("POST " + path + " HTTP/1.1\r\nHost: here\r\n" + more + "\r\n");
    }

    static String length(int bytes) {
        return "Content-Length: " + bytes + "\r\n";
    }

    static String json() {
        return "Content-Type: application/json\r\n";
    }

    static String key(String key) {
        return "Authorization: Bearer " + key + "\r\n";
    }

    void send(String part) throws IOException {
        socket.getOutputStream().write(part.getBytes(StandardCharsets.UTF_8));
    }

    /** Byte by byte, each in a packet of its own. */
    void drip(String part) throws IOException {
        for (byte one : part.getBytes(StandardCharsets.UTF_8)) {
            socket.getOutputStream().write(one);
        }
    }

    /** The status of the answer, which is waited for. */
    int status() throws IOException {
        String line = new String(socket.getInputStream().readNBytes("HTTP/1.1 200".length()), StandardCharsets.UTF_8);
        return Integer.parseInt(line.substring("HTTP/1.1 ".length()));
    }

    boolean answered() throws IOException {
        return socket.getInputStream().available() > 0;
    }

    /** What is left of the answer when the other side closes behind it. */
    String rest() throws IOException {
        return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
