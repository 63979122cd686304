package yardlight.demo.bench;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/**
 * One kept-open HTTP/1.1 connection to the loopback interface that reads no more of an answer than it must, and opens
 * itself anew when the server says that it closes. The load shares the processors with the gateway, so what it costs is taken from the figure.
 */
final class HttpConnection implements AutoCloseable {

    private static final byte[] LENGTH = "content-length:".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] CHUNKED = "transfer-encoding:".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] CLOSES = "connection: close".getBytes(StandardCharsets.US_ASCII);

    private final int port;
    private Socket socket;
    private InputStream in;
    private boolean closes;
    private final byte[] buffer = new byte[16_384];
    private final byte[] line = new byte[1_024];
    private int lineLength;
    private int next;
    private int end;

    HttpConnection(int port) throws IOException {
        this.port = port;
        open();
    }

    private void open() throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(20_000);
        in = socket.getInputStream();
        next = 0;
        end = 0;
        closes = false;
    }

    /** A POST of JSON as bytes, ready to be sent as often as one likes. */
    static byte[] post(String path, String key, String json) {
        byte[] body = json.getBytes(StandardCharsets.UTF_8);
        return ("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nAuthorization: Bearer " + key
                        + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length + "\r\n\r\n" + json)
                .getBytes(StandardCharsets.UTF_8);
    }

    static byte[] get(String path) {
        return ("GET " + path + " HTTP/1.1\r\nHost: localhost\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
    }

    /** Sends a request and comes back with the status once the answer is read to its end. */
    int exchange(byte[] request) throws IOException {
        if (closes) {
            socket.close();
            open();
        }
        socket.getOutputStream().write(request);
        readLine();
        int status = (line[9] - '0') * 100 + (line[10] - '0') * 10 + line[11] - '0';
        int length = 0;
        boolean chunked = false;
        for (readLine(); lineLength > 0; readLine()) {
            if (starts(LENGTH)) {
                length = number(LENGTH.length, 10);
            } else if (starts(CHUNKED)) {
                chunked = true;
            } else if (starts(CLOSES)) {
                closes = true;
            }
        }
        if (chunked) {
            skipChunks();
        } else {
            skip(length);
        }
        return status;
    }

    private void skipChunks() throws IOException {
        readLine();
        for (int size = number(0, 16); size > 0; size = number(0, 16)) {
            skip(size + 2);
            readLine();
        }
        readLine();
    }

    private boolean starts(byte[] name) {
        for (int i = 0; i < name.length; i++) {
            if (i >= lineLength || Character.toLowerCase(line[i]) != name[i]) {
                return false;
            }
        }
        return true;
    }

    private int number(int from, int radix) {
        String digits = new String(line, from, lineLength - from, StandardCharsets.US_ASCII).strip();
        return Integer.parseInt(digits, radix);
    }

    private void readLine() throws IOException {
        lineLength = 0;
        for (int one = read(); one != '\n'; one = read()) {
            if (one != '\r' && lineLength < line.length) {
                line[lineLength++] = (byte) one;
            }
        }
    }

    private int read() throws IOException {
        if (next == end) {
            fill();
        }
        return buffer[next++];
    }

    private void skip(int bytes) throws IOException {
        int left = bytes;
        while (left > 0) {
            if (next == end) {
                fill();
            }
            int step = Math.min(left, end - next);
            next += step;
            left -= step;
        }
    }

    private void fill() throws IOException {
        next = 0;
        end = in.read(buffer);
        if (end < 1) {
            throw new EOFException("the gateway closed the connection");
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
