package yardlight.channels.smpp;

import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jsmpp.PDUStringException;
import org.jsmpp.SMPPConstant;
import org.jsmpp.bean.AbstractSmCommand;
import org.jsmpp.util.DefaultDecomposer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Inbox;
import yardlight.channels.Receipt;

/**
 * Takes in what the centre brings, on threads of its own: while the inbox blocks, the session goes on reading. The centre
 * hears that it has come only once it is kept, else ESME_RX_T_APPN (section 5.1.3), and brings it again.
 */
final class Arrivals {

    private static final Logger LOG = LoggerFactory.getLogger(Arrivals.class);

    private static final DefaultDecomposer READER = new DefaultDecomposer();
    private static final int THREADS = 2;
    private static final int QUEUE = 100;

    /** Bits 5 to 2 of esm_class: section 5.2.12. */
    private static final int TYPE = 0x3C;

    private final References references;
    private final IncomingTexts texts;
    private final InstantSource clock;
    private final ThreadPoolExecutor hands;
    private volatile Optional<Inbox> inbox = Optional.empty();

    Arrivals(References references, IncomingTexts texts, InstantSource clock) {
        this.references = references;
        this.texts = texts;
        this.clock = clock;
        this.hands = new ThreadPoolExecutor(
                THREADS, THREADS, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(QUEUE), work -> {
                    Thread thread = new Thread(work, "smpp-arrivals");
                    thread.setDaemon(true);
                    return thread;
                });
        hands.allowCoreThreadTimeOut(true);
    }

    /** Until then everything stays with the centre. */
    void listen(Inbox given) {
        inbox = Optional.of(given);
    }

    /** A deliver_sm or data_sm as it came over the wire. Comes back at once. */
    void accept(byte[] unit, Reply reply) {
        try {
            hands.execute(() -> take(unit, reply));
        } catch (RejectedExecutionException e) {
            // Too much at once, or closed.
            reply.kept(false);
        }
    }

    /** Takes nothing more in; what is under way has as long to end as a send. */
    void close(long millis) {
        hands.shutdown();
        try {
            if (!hands.awaitTermination(millis, TimeUnit.MILLISECONDS)) {
                hands.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void take(byte[] unit, Reply reply) {
        if (inbox.isEmpty()) {
            reply.kept(false);
            return;
        }
        try {
            take(read(unit), inbox.get(), reply);
        } catch (PDUStringException | IndexOutOfBoundsException | IllegalArgumentException e) {
            LOG.warn("the message centre brought what cannot be read: {}", e.getMessage());
            reply.unreadable();
        } catch (RuntimeException e) {
            LOG.warn("what the message centre brought could not be kept", e);
            reply.kept(false);
        }
    }

    /** Some centres bring things by data_sm (section 4.7.1), which has all but short_message. */
    private static AbstractSmCommand read(byte[] unit) throws PDUStringException {
        return Units.command(unit) == SMPPConstant.CID_DATA_SM ? READER.dataSm(unit) : READER.deliverSm(unit);
    }

    private void take(AbstractSmCommand unit, Inbox given, Reply reply) {
        switch (unit.getEsmClass() & TYPE) {
            case 0 -> texts.take(unit, given, reply);
            case SMPPConstant.ESMCLS_SMSC_DELIV_RECEIPT, SMPPConstant.ESMCLS_INTRMD_DELIV_NOTIF ->
                reply.kept(receipt(unit, given));
            // A phone's own acknowledgement, or the end of a dialogue: nobody asked for either.
            default -> reply.kept(true);
        }
    }

    private boolean receipt(AbstractSmCommand unit, Inbox given) {
        ReceiptText receipt = ReceiptText.of(IncomingText.of(unit).text(), unit.getOptionalParameters());
        if (receipt.id().isEmpty()) {
            LOG.warn("the message centre brought a receipt that does not say what it is about");
            return true;
        }
        String text = references.meant(receipt.id());
        return given.take(new Receipt(SmppChannel.NAME, text, receipt.fate(), receipt.words(), clock.instant()));
    }
}
