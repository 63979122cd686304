package yardlight.channels.mail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * An SMTP server of bare sockets that is well-behaved except where it is told otherwise. It knows no mail library.
 *
 * <p>Commands are named by their verb; {@code GREETING} is what is said first, {@code .} is the end of the text.
 */
public final class ScriptedServer implements AutoCloseable {

    /** What came in: the text as it was before dots were doubled, with CRLF. */
    public record Mail(String from, String to, String text) {}

    /** An answer: words, and what happens after them. */
    public record Step(String words, After after) {}

    public enum After {
        STAY,
        HANG_UP,
        /** The connection is gone with an RST. */
        RESET,
        /** Nothing more is ever said, but the connection stays. */
        SILENCE,
        /** One byte every 20 ms, without an end. */
        DRIP
    }

    private static final Map<String, String> USUAL = Map.of(
            "GREETING", "220 scripted.example ready",
            "EHLO", "250-scripted.example\r\n250 HELP",
            "HELO", "250 scripted.example",
            "MAIL", "250 2.1.0 sender fine",
            "RCPT", "250 2.1.5 recipient fine",
            "DATA", "354 go on",
            ".", "250 2.0.0 taken as 4F2C",
            "QUIT", "221 bye");

    private final ServerSocket door;
    private final Map<String, Step> script = new ConcurrentHashMap<>();
    private final Map<String, Step> once = new ConcurrentHashMap<>();
    private final Set<Socket> guests = ConcurrentHashMap.newKeySet();
    private final CountDownLatch over = new CountDownLatch(1);
    public final List<Mail> mails = new CopyOnWriteArrayList<>();
    public final List<String> commands = new CopyOnWriteArrayList<>();
    public final AtomicInteger connections = new AtomicInteger();

    public ScriptedServer() throws IOException {
        door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        start(this::welcome);
    }

    public int port() {
        return door.getLocalPort();
    }

    public ScriptedServer says(String command, String words) {
        return does(command, words, After.STAY);
    }

    public ScriptedServer does(String command, String words, After after) {
        script.put(command, new Step(words, after));
        return this;
    }

    /** The next time only. */
    ScriptedServer doesOnce(String command, String words, After after) {
        once.put(command, new Step(words, after));
        return this;
    }

    /** Drops everybody who is connected, as a server does with the idle. */
    void hangUpOnAll() throws IOException {
        for (Socket guest : guests) {
            guest.close();
        }
    }

    int guests() {
        return guests.size();
    }

    @Override
    public void close() throws IOException {
        over.countDown();
        door.close();
        hangUpOnAll();
    }

    private void welcome() {
        try {
            while (true) {
                Socket guest = door.accept();
                connections.incrementAndGet();
                guests.add(guest);
                start(() -> serve(guest));
            }
        } catch (IOException e) {
            // Closed: the test is over.
        }
    }

    private void serve(Socket guest) {
        try (guest) {
            new Visit(guest).run();
        } catch (IOException e) {
            // The other side left.
        } finally {
            guests.remove(guest);
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "scripted-server");
        thread.setDaemon(true);
        thread.start();
    }

    private final class Visit {

        private final Socket guest;
        private final BufferedReader in;
        private final OutputStream out;
        private String from = "";
        private String to = "";

        Visit(Socket guest) throws IOException {
            this.guest = guest;
            in = new BufferedReader(new InputStreamReader(guest.getInputStream(), StandardCharsets.ISO_8859_1));
            out = guest.getOutputStream();
        }

        void run() throws IOException {
            boolean stay = answer("GREETING").after() == After.STAY;
            while (stay) {
                String line = in.readLine();
                if (line == null) {
                    return;
                }
                commands.add(line);
                stay = obey(line);
            }
        }

        private boolean obey(String line) throws IOException {
            String verb = line.split("[ :]", 2)[0];
            if (verb.equals("MAIL")) {
                from = line.substring("MAIL FROM:".length());
            }
            if (verb.equals("RCPT")) {
                to = line.substring("RCPT TO:".length());
            }
            Step said = answer(verb);
            if (said.after() == After.STAY
                    && verb.equals("DATA")
                    && said.words().startsWith("354")) {
                mails.add(new Mail(from, to, text()));
                said = answer(".");
            }
            return said.after() == After.STAY && !verb.equals("QUIT");
        }

        private String text() throws IOException {
            StringBuilder text = new StringBuilder();
            for (String line = in.readLine(); !line.equals("."); line = in.readLine()) {
                text.append(line.startsWith(".") ? line.substring(1) : line).append("\r\n");
            }
            return text.toString();
        }

        private Step answer(String command) throws IOException {
            Step step = once.remove(command);
            if (step == null) {
                step = script.getOrDefault(command, new Step(USUAL.getOrDefault(command, "250 fine"), After.STAY));
            }
            if (!step.words().isEmpty()) {
                out.write((step.words() + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
                out.flush();
            }
            switch (step.after()) {
                case STAY, HANG_UP -> {}
                case RESET -> guest.setSoLinger(true, 0);
                case SILENCE -> pause(3_600_000);
                case DRIP -> drip();
            }
            return step;
        }

        private void drip() throws IOException {
            while (!pause(20)) {
                out.write('2');
                out.flush();
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
