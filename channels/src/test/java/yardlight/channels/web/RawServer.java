package yardlight.channels.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Bare sockets that do with each guest what they are told. It knows no HTTP library. */
public final class RawServer implements AutoCloseable {

    /** What is done with a guest, who is shown out afterwards. */
    public interface Manners {
        void treat(Guest guest) throws IOException;
    }

    private final ServerSocket door;
    private final Set<Socket> guests = ConcurrentHashMap.newKeySet();
    private final CountDownLatch over = new CountDownLatch(1);

    /** Requests of which the whole header came. */
    public final AtomicInteger requests = new AtomicInteger();

    public RawServer(Manners manners) throws IOException {
        this(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()), manners);
    }

    public RawServer(ServerSocket door, Manners manners) {
        this.door = door;
        start(() -> {
            try {
                while (true) {
                    Socket socket = door.accept();
                    guests.add(socket);
                    start(() -> serve(socket, manners));
                }
            } catch (IOException e) {
                // Closed: the test is over.
            }
        });
    }

    public int port() {
        return door.getLocalPort();
    }

    @Override
    public void close() throws IOException {
        over.countDown();
        door.close();
        for (Socket guest : guests) {
            guest.close();
        }
    }

    private void serve(Socket socket, Manners manners) {
        try (socket) {
            manners.treat(new Guest(socket));
        } catch (IOException e) {
            // The other side left.
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "raw-server");
        thread.setDaemon(true);
        thread.start();
    }

    /** One connection. */
    public final class Guest {

        private final Socket socket;

        Guest(Socket socket) {
            this.socket = socket;
        }

        /** Up to the empty line. Ends the visit when there is none. */
        public String head() throws IOException {
            InputStream in = socket.getInputStream();
            var head = new ByteArrayOutputStream();
            while (!head.toString(StandardCharsets.ISO_8859_1).endsWith("\r\n\r\n")) {
                int next = in.read();
                if (next < 0) {
                    throw new IOException("no whole header");
                }
                head.write(next);
            }
            requests.incrementAndGet();
            return head.toString(StandardCharsets.ISO_8859_1);
        }

        public byte[] body(int length) throws IOException {
            return socket.getInputStream().readNBytes(length);
        }

        public void says(String words) throws IOException {
            socket.getOutputStream().write(words.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
        }

        /** The connection will be gone with an RST. */
        public void resets() throws IOException {
            socket.setSoLinger(true, 0);
        }

        public void isSilent() {
            pause(3_600_000);
        }

        /** Says a letter every 20 ms, without an end. */
        public void drips() throws IOException {
            while (!pause(20)) {
                says("x");
            }
        }

        private boolean pause(long millis) {
            try {
                return over.await(millis, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                return true;
            }
        }
    }
}
