package yardlight.channels.smpp;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.SSLSocketFactory;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps one session open, from a thread of its own: who wants to send never connects. After a failure it waits before it
 * tries again, longer and longer, and meanwhile whoever asks is told at once.
 */
final class Link {

    private static final Logger LOG = LoggerFactory.getLogger(Link.class);

    private static final Duration FIRST_PAUSE = Duration.ofMillis(250);
    private static final Duration LONGEST_PAUSE = Duration.ofMinutes(1);
    /** A session that ended before it was as old says nothing for the next one. */
    private static final Duration STEADY = Duration.ofSeconds(10);

    private final SmppSettings settings;
    private final Supplier<SSLSocketFactory> tls;
    private final Arrivals arrivals;
    private final ScheduledThreadPoolExecutor timer;
    private Optional<Session> session = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private boolean started;
    private boolean hurried;
    private boolean closed;

    Link(SmppSettings settings, Supplier<SSLSocketFactory> tls, Arrivals arrivals, ScheduledThreadPoolExecutor timer) {
        this.settings = settings;
        this.tls = tls;
        this.arrivals = arrivals;
        this.timer = timer;
    }

    /** Opens a session soon, if that has not begun yet. */
    synchronized void start() {
        if (started || closed) {
            return;
        }
        started = true;
        Thread keeper = new Thread(this::keep, "smpp-link");
        keeper.setDaemon(true);
        keeper.start();
        long quiet = settings.timeouts().quiet().toMillis();
        timer.scheduleWithFixedDelay(this::enquireIfQuiet, quiet, Math.max(quiet / 2, 1), TimeUnit.MILLISECONDS);
    }

    /**
     * The session that is open. Waits for it while one is being opened and nothing is known to stand against that.
     *
     * @param end in the time of {@link System#nanoTime()}
     * @throws Unsent if there is none
     */
    synchronized Session session(long end) throws Unsent {
        start();
        while (!closed && failure.isEmpty()) {
            if (session.filter(Session::isOpen).isPresent()) {
                return session.get();
            }
            waitUntil(end);
        }
        throw new Unsent(closed ? "the channel is closed" : failure.get());
    }

    /** Whether the centre is there: asks it over the session, and opens one at once if there is none. Empty if it is. */
    Optional<String> knock(long end) {
        Optional<Session> open = open();
        if (open.isPresent() && open.get().enquire().isEmpty()) {
            return Optional.empty();
        }
        try {
            hurry();
            session(end);
            return Optional.empty();
        } catch (Unsent e) {
            return Optional.of(e.getMessage());
        }
    }

    /** Why there is no session and nobody waits for one; empty if there is, or will be soon. */
    synchronized Optional<String> failure() {
        return failure;
    }

    /** No more sessions; the one that is open takes its leave. */
    void close() {
        Optional<Session> last = open();
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        last.ifPresent(Session::unbind);
    }

    private synchronized Optional<Session> open() {
        return session.filter(Session::isOpen);
    }

    private synchronized void hurry() {
        failure = Optional.empty();
        hurried = true;
        notifyAll();
    }

    private void keep() {
        int failures = 0;
        while (pause(failures)) {
            long since = System.nanoTime();
            String why;
            boolean bound = false;
            try {
                Session opened = connect();
                bound = true;
                opened.read(arrivals);
                why = opened.why();
            } catch (IOException | RuntimeException | Error e) {
                // Whatever it is: without this thread there is no session any more.
                why = words(e);
            }
            boolean steady = bound && System.nanoTime() - since > STEADY.toNanos();
            failures = steady ? 0 : failures + 1;
            // A session that ended is opened again at once, and who sends waits for it; but not over and over.
            lost(bound && failures < 2 ? Optional.empty() : Optional.of(settings.server() + ": " + why));
            LOG.info("no session with {}: {}", settings.server(), why);
        }
    }

    private Session connect() throws IOException {
        Socket plain = new Socket();
        var limit =
                timer.schedule(() -> close(plain), settings.timeouts().whole().toMillis(), TimeUnit.MILLISECONDS);
        boolean bound = false;
        try {
            plain.setTcpNoDelay(true);
            plain.setKeepAlive(true);
            plain.setSoTimeout((int) settings.timeouts().response().toMillis());
            plain.connect(new InetSocketAddress(settings.host(), settings.port()), (int)
                    settings.timeouts().connect().toMillis());
            Session opened = new Session(settings.tls() ? secured(plain) : plain, settings, timer);
            opened.bind();
            bound = true;
            found(opened);
            return opened;
        } catch (RejectedExecutionException e) {
            throw new IOException("the channel is closed", e);
        } finally {
            limit.cancel(false);
            if (!bound) {
                close(plain);
            }
        }
    }

    private Socket secured(Socket plain) throws IOException {
        SSLSocket socket = (SSLSocket) tls.get().createSocket(plain, settings.host(), settings.port(), true);
        SSLParameters parameters = socket.getSSLParameters();
        parameters.setEndpointIdentificationAlgorithm("HTTPS");
        socket.setSSLParameters(parameters);
        socket.startHandshake();
        return socket;
    }

    private synchronized void found(Session opened) {
        session = Optional.of(opened);
        failure = Optional.empty();
        notifyAll();
        if (closed) {
            opened.end("closed");
        }
        LOG.info("bound to {}", settings.server());
    }

    private synchronized void lost(Optional<String> why) {
        session = Optional.empty();
        failure = why;
        notifyAll();
    }

    /** Waits as long as so many failures ask for, or until somebody cannot. Whether to go on. */
    private synchronized boolean pause(int failures) {
        long end = System.nanoTime() + length(failures).toNanos();
        while (!closed && !hurried && System.nanoTime() < end) {
            try {
                waitUntil(end);
            } catch (Unsent e) {
                break;
            }
        }
        hurried = false;
        return !closed && !Thread.currentThread().isInterrupted();
    }

    private static Duration length(int failures) {
        if (failures == 0) {
            return Duration.ZERO;
        }
        Duration doubled = FIRST_PAUSE.multipliedBy(1L << Math.min(failures - 1, 10));
        return doubled.compareTo(LONGEST_PAUSE) < 0 ? doubled : LONGEST_PAUSE;
    }

    private void waitUntil(long end) throws Unsent {
        long left = end - System.nanoTime();
        if (left <= 0) {
            throw new Unsent(settings.server() + " has not let us in yet");
        }
        try {
            TimeUnit.NANOSECONDS.timedWait(this, Math.max(left, 1_000_000));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Unsent("interrupted before it was sent");
        }
    }

    private void enquireIfQuiet() {
        open().filter(one -> one.quietFor(settings.timeouts().quiet()))
                .ifPresent(one -> one.enquire().ifPresent(why -> LOG.info("{}: {}", settings.server(), why)));
    }

    private static String words(Throwable e) {
        if (e instanceof UnknownHostException) {
            return "no such host is known";
        }
        return e instanceof Error ? e.toString() : String.valueOf(e.getMessage());
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            // Closed is closed.
        }
    }
}
