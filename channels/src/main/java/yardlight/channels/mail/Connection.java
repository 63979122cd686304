package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.IOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.Socket;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.Attempt;

/**
 * One connection to the server: opened at its first message, kept for the next ones. One thread at a time, except for
 * {@link #cut()}.
 */
final class Connection {

    private static final Logger LOG = LoggerFactory.getLogger(Connection.class);

    private final Office office;
    private final Dialogue dialogue;
    private final Socket wire = new Socket();
    private boolean open;
    private boolean reused;
    private volatile boolean cut;

    Connection(Office office) {
        this.office = office;
        this.dialogue = office.dialogue();
    }

    /** Hands the message over. What comes of it says whether it failed for our sake or the server's, and not for its own. */
    Attempt deliver(MimeMessage message) {
        Attempt attempt = handOver(message);
        return Verdict.isOurs(dialogue.stage(), dialogue.reply()) ? attempt.forEveryMessage() : attempt;
    }

    private Attempt handOver(MimeMessage message) {
        reused = open;
        try {
            if (open) {
                dialogue.begin();
            } else {
                open();
            }
            dialogue.sendMessage(message, message.getAllRecipients());
            return dialogue.reply()
                    .map(reply -> Verdict.of(dialogue.stage(), reply))
                    .orElseThrow();
        } catch (MessagingException | IOException e) {
            return verdict(e);
        } catch (RuntimeException e) {
            LOG.warn("the mail library failed at {}", dialogue.stage().step(), e);
            return verdict(e);
        }
    }

    /** Lets itself in, no more. Empty when it came that far, else what was in the way. */
    Optional<String> knock() {
        try {
            open();
            return Optional.empty();
        } catch (MessagingException | IOException e) {
            return Optional.of(verdict(e).detail());
        } catch (RuntimeException e) {
            LOG.warn("the mail library failed at {}", dialogue.stage().step(), e);
            return Optional.of(verdict(e).detail());
        }
    }

    /** It had been idle, and the server has left meanwhile: nothing of the message was told to anybody. */
    boolean wentStale() {
        return reused
                && dialogue.stage() == Stage.SENDER
                && dialogue.reply().map(reply -> reply.code() == 421).orElse(true);
    }

    /** Asks the server whether it is still there. */
    boolean isAlive() {
        return open && !cut && dialogue.isConnected();
    }

    /** Takes leave of the server, without waiting for its answer. */
    void close() {
        try {
            dialogue.close();
        } catch (MessagingException | RuntimeException e) {
            // It is gone already, which is what was wanted.
        } finally {
            drop();
        }
    }

    /** Ends whatever another thread is doing with this connection: its next or present read or write fails. */
    void cut() {
        cut = true;
        drop();
    }

    private void open() throws MessagingException, IOException {
        Socket socket = office.connect(wire);
        dialogue.setLocalHost(literal(socket.getLocalAddress()));
        dialogue.connect(socket);
        open = true;
    }

    private Attempt verdict(Exception e) {
        Stage stage = dialogue.stage();
        Optional<Reply> reply = dialogue.reply();
        boolean ended =
                reply.isPresent() && (stage == Stage.SENT || !reply.get().isPositive());
        if (ended) {
            return Verdict.of(stage, reply.get());
        }
        MailSettings settings = office.settings();
        return Verdict.onSilence(stage, cut ? Trouble.outOfTime(stage, settings) : Trouble.words(e, stage, settings));
    }

    private void drop() {
        try {
            wire.close();
        } catch (IOException e) {
            // Closed is closed.
        }
    }

    /** RFC 5321 4.1.4: who has no name in the DNS says the address; no look-up that could take long. */
    private static String literal(InetAddress address) {
        String plain = address.getHostAddress().replaceFirst("%.*", "");
        return address instanceof Inet6Address ? "[IPv6:" + plain + "]" : "[" + plain + "]";
    }
}
