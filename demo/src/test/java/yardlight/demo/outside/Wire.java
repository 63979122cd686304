package yardlight.demo.outside;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * The way to a server, which can vanish with the server behind it: nothing comes back from there any more, and nothing says that it
 * will not.
 */
final class Wire implements AutoCloseable {

    private static final int PIECE = 8_192;

    private final int server;
    private final ServerSocket door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    private final List<Socket> sockets = new CopyOnWriteArrayList<>();
    private volatile Object life = new Object();
    private volatile boolean away;

    /**
     * @param server its port on this machine
     */
    Wire(int server) throws IOException {
        this.server = server;
        start(this::let);
    }

    int port() {
        return door.getLocalPort();
    }

    /** Whatever goes over it now never hears anything again, also not when the server is back. */
    void vanish() {
        away = true;
        life = new Object();
    }

    /** The server is back, and knows nothing of what there was. */
    void comeBack() {
        away = false;
    }

    private void let() {
        try {
            while (!door.isClosed()) {
                Socket near = kept(door.accept());
                if (!away) {
                    Socket far = kept(new Socket(InetAddress.getLoopbackAddress(), server));
                    Object mine = life;
                    start(() -> carry(near, far, mine));
                    start(() -> carry(far, near, mine));
                }
            }
        } catch (IOException e) {
            // It was closed.
        }
    }

    private Socket kept(Socket socket) {
        sockets.add(socket);
        return socket;
    }

    private void carry(Socket from, Socket to, Object mine) {
        var piece = new byte[PIECE];
        try {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                if (life == mine) {
                    out.write(piece, 0, read);
                }
            }
            if (life == mine) {
                to.shutdownOutput();
            }
        } catch (IOException e) {
            close(from, to, mine);
        }
    }

    private void close(Socket one, Socket other, Object mine) {
        if (life == mine) {
            close(one);
            close(other);
        }
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // There is nothing more to do with it.
        }
    }

    private static void start(Runnable work) {
        var thread = new Thread(work, "wire");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
        sockets.forEach(Wire::close);
    }
}
