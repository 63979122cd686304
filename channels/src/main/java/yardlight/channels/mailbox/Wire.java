package yardlight.channels.mailbox;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.util.Optional;
import javax.net.SocketFactory;

/**
 * Makes the sockets for the mail library and remembers the last one: closing it from another thread is the only way to end a
 * wait for a server that sends one byte now and then.
 */
final class Wire extends SocketFactory {

    private final SocketFactory maker;
    private Optional<Socket> last = Optional.empty();
    private boolean cut;

    Wire(SocketFactory maker) {
        this.maker = maker;
    }

    /** Ends whatever is done over it, now and later. */
    void cut() {
        Optional<Socket> open;
        synchronized (this) {
            cut = true;
            open = last;
        }
        open.ifPresent(Wire::close);
    }

    synchronized boolean isCut() {
        return cut;
    }

    @Override
    public Socket createSocket() throws IOException {
        Socket socket = maker.createSocket();
        socket.setTcpNoDelay(true);
        socket.setKeepAlive(true);
        synchronized (this) {
            if (!cut) {
                last = Optional.of(socket);
                return socket;
            }
        }
        close(socket);
        throw new IOException("no more time");
    }

    @Override
    public Socket createSocket(String host, int port) throws IOException {
        return connected(new InetSocketAddress(host, port));
    }

    @Override
    public Socket createSocket(InetAddress host, int port) throws IOException {
        return connected(new InetSocketAddress(host, port));
    }

    @Override
    public Socket createSocket(String host, int port, InetAddress from, int fromPort) throws IOException {
        return connected(new InetSocketAddress(host, port));
    }

    @Override
    public Socket createSocket(InetAddress host, int port, InetAddress from, int fromPort) throws IOException {
        return connected(new InetSocketAddress(host, port));
    }

    private Socket connected(InetSocketAddress address) throws IOException {
        Socket socket = createSocket();
        socket.connect(address);
        return socket;
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // Closed is closed.
        }
    }
}
