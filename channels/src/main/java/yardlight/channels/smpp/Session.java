package yardlight.channels.smpp;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
import org.jsmpp.PDUStringException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.util.DefaultComposer;

/**
 * One session as a transceiver (section 2.2), from its bind to its end. Any number of threads may ask at once; one thread
 * reads.
 *
 * <p>jSMPP's own session would do most of this, but lets those who wait for an answer wait on when the connection is gone,
 * drops the words of a refusal, and answers incoming texts and our own on the same few threads, so that a slow database
 * would make texts doubtful.
 */
final class Session {

    private static final DefaultComposer COMPOSER = new DefaultComposer();
    private static final byte NO_ADDRESS = 0;

    private final Socket socket;
    private final OutputStream out;
    private final Units in;
    private final SmppSettings settings;
    private final ScheduledExecutorService timer;
    private final AtomicInteger sequence = new AtomicInteger();
    private final Map<Integer, CompletableFuture<byte[]>> awaited = new ConcurrentHashMap<>();
    private final AtomicReference<String> ended = new AtomicReference<>();
    private volatile long heard = System.nanoTime();

    /** Over a socket that is connected. */
    Session(Socket socket, SmppSettings settings, ScheduledExecutorService timer) throws IOException {
        this.socket = socket;
        this.settings = settings;
        this.timer = timer;
        this.out = socket.getOutputStream();
        this.in = new Units(new DataInputStream(new BufferedInputStream(socket.getInputStream())));
    }

    /** bind_transceiver (section 4.1.5). An {@link IOException} says for a person why it is not bound. */
    void bind() throws IOException {
        SmppSettings.Login login = settings.login();
        socket.setSoTimeout((int) settings.timeouts().response().toMillis());
        try {
            write(COMPOSER.bind(
                    SMPPConstant.CID_BIND_TRANSCEIVER,
                    next(),
                    login.systemId(),
                    login.password(),
                    login.systemType(),
                    SMPPConstant.IF_VERSION_34,
                    NO_ADDRESS,
                    NO_ADDRESS,
                    null));
            byte[] unit = in.next();
            if (Units.status(unit) != SMPPConstant.STAT_ESME_ROK) {
                throw new IOException("the bind was not taken: " + Status.words(Units.status(unit)));
            }
            if (Units.command(unit) != SMPPConstant.CID_BIND_TRANSCEIVER_RESP) {
                throw new IOException("something else was answered to the bind");
            }
        } catch (EOFException e) {
            throw new IOException("it hung up at the bind", e);
        } catch (SocketTimeoutException e) {
            throw new IOException(
                    "no answer to the bind within "
                            + seconds(settings.timeouts().response()),
                    e);
        } catch (PDUStringException e) {
            throw new IOException("the login cannot be written: " + e.getMessage(), e);
        }
        socket.setSoTimeout(0);
        heard = System.nanoTime();
    }

    /** Reads until the session has ended, and brings incoming texts and receipts to where they are taken. */
    void read(Arrivals arrivals) {
        try {
            while (true) {
                byte[] unit = in.next();
                heard = System.nanoTime();
                handle(unit, arrivals);
            }
        } catch (EOFException e) {
            end("it hung up");
        } catch (IOException | RuntimeException e) {
            end("the connection broke: " + e.getMessage());
        }
    }

    private void handle(byte[] unit, Arrivals arrivals) throws IOException {
        int number = Units.sequence(unit);
        int command = Units.command(unit);
        if ((command & SMPPConstant.MASK_CID_RESP) != 0) {
            CompletableFuture<byte[]> waiting = awaited.remove(number);
            if (waiting != null) {
                waiting.complete(unit);
            }
            return;
        }
        switch (command) {
            case SMPPConstant.CID_ENQUIRE_LINK -> write(COMPOSER.enquireLinkResp(number));
            case SMPPConstant.CID_DELIVER_SM ->
                arrivals.accept(unit, new Reply(this, status -> respond(COMPOSER.deliverSmResp(status, number, ""))));
            case SMPPConstant.CID_DATA_SM ->
                arrivals.accept(unit, new Reply(this, status -> respond(dataSmResp(status, number))));
            case SMPPConstant.CID_UNBIND -> leave(number);
            // Section 4.12.1: nothing is answered to an alert_notification.
            case SMPPConstant.CID_ALERT_NOTIFICATION -> {}
            default -> write(COMPOSER.genericNack(SMPPConstant.STAT_ESME_RINVCMDID, number));
        }
    }

    private static byte[] dataSmResp(int status, int number) {
        try {
            return COMPOSER.dataSmResp(status, number, "");
        } catch (PDUStringException e) {
            throw new IllegalStateException("no name must be short enough for a name", e);
        }
    }

    /** The other side takes its leave (section 4.2): from before it hears so, nothing more is asked over this session. */
    private void leave(int number) throws IOException {
        ended.compareAndSet(null, "the message centre took its leave");
        write(COMPOSER.unbindResp(SMPPConstant.STAT_ESME_ROK, number));
        drop();
    }

    /** An incoming text or receipt has been dealt with. If nobody is there any more, it will be brought again. */
    private void respond(byte[] unit) {
        try {
            write(unit);
        } catch (IOException e) {
            end("the connection broke: " + e.getMessage());
        }
    }

    /**
     * Asks, and waits for the answer.
     *
     * @throws Unsent if it cannot have been taken
     * @throws Unanswered if it may have been
     */
    byte[] ask(String what, IntFunction<byte[]> request) throws Unsent, Unanswered {
        int number = next();
        byte[] unit = request.apply(number);
        var answer = new CompletableFuture<byte[]>();
        awaited.put(number, answer);
        try {
            send(unit);
            return answer.get(settings.timeouts().response().toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            throw new Unanswered("no answer to " + what + " within "
                    + seconds(settings.timeouts().response()));
        } catch (ExecutionException e) {
            throw new Unanswered(ended.get());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Unanswered("interrupted while it waited for the answer to " + what);
        } finally {
            awaited.remove(number);
        }
    }

    private void send(byte[] unit) throws Unsent {
        // After it is awaited: who ends the session from now on tells us.
        if (ended.get() != null) {
            throw new Unsent(ended.get());
        }
        try {
            write(unit);
        } catch (IOException e) {
            end("the connection broke: " + e.getMessage());
            throw new Unsent(ended.get());
        }
    }

    /** Asks whether the centre is there (section 4.11), and ends the session if it does not answer. */
    Optional<String> enquire() {
        try {
            ask("enquire_link", COMPOSER::enquireLink);
            return Optional.empty();
        } catch (Unsent | Unanswered e) {
            end(e.getMessage());
            return Optional.of(ended.get());
        }
    }

    /** Whether nothing has come in for as long. */
    boolean quietFor(Duration length) {
        return System.nanoTime() - heard >= length.toNanos();
    }

    boolean isOpen() {
        return ended.get() == null;
    }

    /** Why it ended, for a person; only once it has. */
    String why() {
        return ended.get();
    }

    /** Takes our leave, without waiting for long. */
    void unbind() {
        try {
            ask("unbind", COMPOSER::unbind);
        } catch (Unsent | Unanswered e) {
            // It is gone already, which is what was wanted.
        } finally {
            end("closed");
        }
    }

    /** Ends it at once; the first reason given counts. Whoever waits for an answer waits no longer. */
    void end(String why) {
        ended.compareAndSet(null, why);
        drop();
    }

    private void drop() {
        try {
            socket.close();
        } catch (IOException e) {
            // Closed is closed.
        }
        for (Integer number : awaited.keySet()) {
            CompletableFuture<byte[]> waiting = awaited.remove(number);
            if (waiting != null) {
                waiting.completeExceptionally(new EOFException());
            }
        }
    }

    /** A centre that does not read what we send is given up: nothing else would end the write. */
    private void write(byte[] unit) throws IOException {
        synchronized (out) {
            Future<?> limit = limit();
            try {
                out.write(unit);
                out.flush();
            } finally {
                limit.cancel(false);
            }
        }
    }

    private Future<?> limit() throws IOException {
        long length = settings.timeouts().response().toMillis();
        try {
            return timer.schedule(() -> end("it does not read what it is sent"), length, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            throw new IOException("the channel is closed", e);
        }
    }

    /** Section 5.1.4: from 1 on. */
    private int next() {
        return sequence.updateAndGet(last -> last == Integer.MAX_VALUE ? 1 : last + 1);
    }

    private static String seconds(Duration length) {
        return length.toMillis() % 1000 == 0 ? length.toSeconds() + " s" : length.toMillis() + " ms";
    }
}
