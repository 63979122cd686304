package yardlight.gateway.transport;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;

/** The addresses by which a machine speaks with itself: RFC 1122 3.2.1.3 and RFC 4291 2.5.3. */
final class Loopback {

    static final InetAddress OLD = literal("127.0.0.1");
    static final String NEW = "::1";

    private Loopback() {}

    /** Whether this machine has the new one: it may have been switched off. */
    static boolean hasNew() {
        try (var socket = new ServerSocket()) {
            socket.bind(new InetSocketAddress(NEW, 0));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static InetAddress literal(String address) {
        try {
            return InetAddress.getByName(address);
        } catch (UnknownHostException e) {
            throw new IllegalStateException("an address in numbers is not looked up", e);
        }
    }
}
