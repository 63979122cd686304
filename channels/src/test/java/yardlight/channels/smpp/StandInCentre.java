package yardlight.channels.smpp;

import java.io.IOException;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.jsmpp.DefaultPDUReader;
import org.jsmpp.PDUException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.SynchronizedPDUSender;
import org.jsmpp.bean.OptionalParameter;
import org.jsmpp.bean.SubmitSm;
import org.jsmpp.extra.ProcessRequestException;
import org.jsmpp.session.BindRequest;
import org.jsmpp.session.SMPPServerSession;
import org.jsmpp.session.ServerMessageReceiverListener;
import org.jsmpp.session.SubmitSmResult;
import org.jsmpp.session.connection.socket.SocketConnection;
import org.jsmpp.util.MessageId;

/** A message centre for tests: the server side of jSMPP, which does what it is told and remembers what it took. */
public final class StandInCentre implements AutoCloseable {

    /** What becomes of a bind or a text. */
    enum Does {
        ANSWER,
        HANG_UP,
        /** Takes it, and never says so. */
        SILENCE
    }

    /** In the order in which they came, whatever was answered, except for what was refused. */
    public final List<SubmitSm> taken = new CopyOnWriteArrayList<>();

    final List<BindRequest> binds = new CopyOnWriteArrayList<>();
    final AtomicInteger enquiries = new AtomicInteger();

    /** How many texts were being answered at once, at most. */
    final AtomicInteger most = new AtomicInteger();

    volatile int bindStatus;
    volatile Does bind = Does.ANSWER;
    /** Of every answer to a text; what is not 0 refuses it. */
    public volatile int status;

    volatile Does text = Does.ANSWER;
    volatile Does enquiry = Does.ANSWER;
    volatile String words = "";
    volatile String idFormat = "%08x";
    volatile Runnable whileAnswering = () -> {};

    private final ServerSocket door;
    private final CopyOnWriteArrayList<SMPPServerSession> sessions = new CopyOnWriteArrayList<>();
    private final CountDownLatch over = new CountDownLatch(1);
    private final AtomicInteger ids = new AtomicInteger(0xA0);
    private final AtomicInteger answering = new AtomicInteger();

    public StandInCentre() throws IOException {
        this(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()));
    }

    StandInCentre(ServerSocket door) {
        this.door = door;
        daemon(this::admit);
    }

    public int port() {
        return door.getLocalPort();
    }

    /** The one that was opened last. */
    SMPPServerSession session() {
        return sessions.get(sessions.size() - 1);
    }

    public int sessions() {
        return sessions.size();
    }

    /** Breaks every connection. */
    void cut() {
        sessions.forEach(SMPPServerSession::close);
    }

    /** Takes leave over every connection, and waits until the others have said that they know. */
    void leave() {
        sessions.forEach(SMPPServerSession::unbindAndClose);
    }

    @Override
    public void close() throws IOException {
        over.countDown();
        door.close();
        cut();
    }

    private void admit() {
        while (!door.isClosed()) {
            try {
                Socket socket = door.accept();
                daemon(() -> serve(socket));
            } catch (IOException e) {
                return;
            }
        }
    }

    private void serve(Socket socket) {
        try {
            var sender = new SynchronizedPDUSender(new TalkativeSender(() -> words));
            var listener = (ServerMessageReceiverListener) Proxy.newProxyInstance(
                    getClass().getClassLoader(), new Class<?>[] {ServerMessageReceiverListener.class}, doing());
            var session = new SMPPServerSession(
                    new SocketConnection(socket), null, listener, null, 16, 1_000, sender, new DefaultPDUReader());
            session.setTransactionTimer(20_000);
            answer(session.waitForBind(20_000), session);
        } catch (IOException | TimeoutException | PDUException e) {
            // It left before it was bound.
        }
    }

    private void answer(BindRequest request, SMPPServerSession session) throws IOException, PDUException {
        binds.add(request);
        if (bind == Does.HANG_UP) {
            session.close();
        } else if (bind == Does.ANSWER && bindStatus != 0) {
            request.reject(bindStatus);
            session.close();
        } else if (bind == Does.ANSWER) {
            sessions.add(session);
            request.accept("centre");
        }
    }

    private InvocationHandler doing() {
        return (proxy, method, arguments) -> switch (method.getName()) {
            case "onAcceptSubmitSm" -> take((SubmitSm) arguments[0], (SMPPServerSession) arguments[1]);
            case "onAcceptEnquireLink" -> {
                enquiries.incrementAndGet();
                if (enquiry == Does.SILENCE) {
                    over.await();
                }
                yield null;
            }
            default -> throw new ProcessRequestException("not here", SMPPConstant.STAT_ESME_RINVCMDID);
        };
    }

    private SubmitSmResult take(SubmitSm unit, SMPPServerSession session) throws Exception {
        most.accumulateAndGet(answering.incrementAndGet(), Math::max);
        try {
            whileAnswering.run();
            if (status != 0) {
                throw new ProcessRequestException(words, status);
            }
            taken.add(unit);
            if (text == Does.HANG_UP) {
                session.close();
            }
            if (text == Does.SILENCE) {
                over.await();
            }
            var said = new OptionalParameter.Additional_status_info_text(TalkativeSender.fitting(words));
            String id = String.format(idFormat, ids.incrementAndGet());
            return new SubmitSmResult(
                    new MessageId(id), words.isEmpty() ? new OptionalParameter[0] : new OptionalParameter[] {said});
        } finally {
            answering.decrementAndGet();
        }
    }

    private static void daemon(Runnable work) {
        Thread thread = new Thread(work, "stand-in-centre");
        thread.setDaemon(true);
        thread.start();
    }
}
