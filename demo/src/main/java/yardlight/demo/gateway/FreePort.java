package yardlight.demo.gateway;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Finds a port on the loopback interface. */
public final class FreePort {

    private FreePort() {}

    /** The wished port if nobody has it, else any free one; 0 wishes for nothing in particular. */
    public static int orAnother(int wished) {
        try {
            return bound(wished);
        } catch (IOException taken) {
            return any();
        }
    }

    public static int any() {
        try {
            return bound(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int bound(int port) throws IOException {
        try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
