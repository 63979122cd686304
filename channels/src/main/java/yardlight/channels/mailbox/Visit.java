package yardlight.channels.mailbox;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.FetchProfile;
import jakarta.mail.Flags;
import jakarta.mail.Folder;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.UIDFolder;
import jakarta.mail.event.MessageCountAdapter;
import jakarta.mail.event.MessageCountEvent;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.search.FlagTerm;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javax.net.SocketFactory;
import org.eclipse.angus.mail.imap.IMAPFolder;
import org.eclipse.angus.mail.imap.IMAPMessage;
import org.eclipse.angus.mail.imap.IMAPStore;
import yardlight.channels.mail.MailSettings.Tls;
import yardlight.channels.mail.Trust;

/** One session with the server, with the folder open. One thread at a time; each step ends within the settings' whole time. */
final class Visit {

    /** Of one mail, in bytes: words stand in front, and what is attached behind them is of no use. */
    private static final int MOST = 2 * 1024 * 1024;

    private static final int MOST_AT_ONCE = 500;

    /** A mail in the folder. */
    record Lying(IMAPMessage message, long uid, Instant at) {}

    /** What is done within a limit. */
    private interface Step<T> {
        T take() throws MessagingException, IOException;
    }

    private final MailboxSettings settings;
    private final ScheduledExecutorService timer;
    private final Wire wire;
    private final Session session;
    private final IMAPStore store;
    private IMAPFolder folder;
    private volatile boolean waiting;

    Visit(MailboxSettings settings, ScheduledExecutorService timer) {
        this.settings = settings;
        this.timer = timer;
        this.wire = new Wire(
                settings.tls() == Tls.IMPLICIT ? Trust.in(settings.certificate()) : SocketFactory.getDefault());
        this.session = Session.getInstance(properties());
        this.store = new IMAPStore(session, null);
    }

    /** Connects, logs in, and opens the folder. */
    void open() throws MessagingException, IOException {
        String secret = settings.login().secret();
        within(settings.timeouts().whole(), () -> {
            try {
                store.connect(settings.host(), settings.port(), settings.login().username(), secret);
            } catch (AuthenticationFailedException e) {
                settings.login().tokens().ifPresent(tokens -> tokens.refused(secret));
                throw e;
            }
            folder = (IMAPFolder) store.getFolder(settings.folder());
            folder.open(Folder.READ_WRITE);
            folder.addMessageCountListener(new Bell());
            return folder;
        });
    }

    /** The newest of those that nobody has marked as read, the oldest of them first. */
    List<Lying> unread() throws MessagingException, IOException {
        return within(settings.timeouts().whole(), () -> {
            Message[] found = folder.search(new FlagTerm(new Flags(Flags.Flag.SEEN), false));
            Message[] last = Arrays.copyOfRange(found, Math.max(0, found.length - MOST_AT_ONCE), found.length);
            var profile = new FetchProfile();
            profile.add(UIDFolder.FetchProfileItem.UID);
            profile.add(IMAPFolder.FetchProfileItem.INTERNALDATE);
            folder.fetch(last, profile);
            var all = new ArrayList<Lying>();
            for (Message one : last) {
                Optional<Instant> at =
                        Optional.ofNullable(one.getReceivedDate()).map(Date::toInstant);
                all.add(new Lying((IMAPMessage) one, folder.getUID(one), at.orElse(Instant.MAX)));
            }
            return all;
        });
    }

    /** The mail itself, without marking it; cut off when it is long. */
    MimeMessage read(Lying mail) throws MessagingException, IOException {
        byte[] bytes = within(settings.timeouts().whole(), () -> {
            mail.message().setPeek(true);
            try (InputStream in = mail.message().getMimeStream()) {
                return in.readNBytes(MOST);
            }
        });
        if (bytes.length == 0) {
            // The library makes that of a refusal, and an empty mail would be marked as read.
            throw new MessagingException("the server does not give it");
        }
        return new MimeMessage(session, new ByteArrayInputStream(bytes));
    }

    void markRead(Lying mail) throws MessagingException, IOException {
        within(settings.timeouts().whole(), () -> {
            mail.message().setFlag(Flags.Flag.SEEN, true);
            return mail;
        });
    }

    /** What the server has called the folder's mails so far is good for nothing once this changes. */
    long validity() throws MessagingException {
        return folder.getUIDValidity();
    }

    /** How many mails there are, as far as the server has said by now. */
    int count() throws MessagingException, IOException {
        return within(settings.timeouts().whole(), folder::getMessageCount);
    }

    boolean canWait() throws MessagingException, IOException {
        return within(settings.timeouts().whole(), () ->
                (Boolean) folder.doCommand(protocol -> protocol.hasCapability("IDLE")));
    }

    /**
     * Waits until the server says that something has changed, and at most so long: RFC 2177. Of what came since the last
     * command a server may tell or not.
     */
    void await(Duration most) throws MessagingException, IOException {
        within(most.plus(settings.timeouts().whole()), () -> {
            waiting = true;
            Future<?> end = timer.schedule(this::nudge, most.toMillis(), TimeUnit.MILLISECONDS);
            try {
                folder.idle(true);
            } finally {
                waiting = false;
                end.cancel(false);
            }
            return folder;
        });
    }

    /** Ends a wait from another thread: whatever else is asked of the folder does. */
    void nudge() {
        try {
            folder.doCommand(protocol -> {
                protocol.noop();
                return null;
            });
        } catch (MessagingException | RuntimeException e) {
            // The thread that waits hears of it, too.
        }
    }

    boolean isCut() {
        return wire.isCut();
    }

    /** From any thread, and for good. */
    void cut() {
        wire.cut();
    }

    void leave() {
        Future<?> end = cutAfter(Duration.ofSeconds(1));
        try {
            store.close();
        } catch (MessagingException | RuntimeException e) {
            // It is gone already, which is what was wanted.
        } finally {
            end.cancel(false);
            wire.cut();
        }
    }

    private <T> T within(Duration limit, Step<T> step) throws MessagingException, IOException {
        Future<?> end = cutAfter(limit);
        try {
            return step.take();
        } finally {
            end.cancel(false);
        }
    }

    private Future<?> cutAfter(Duration limit) {
        try {
            return timer.schedule(wire::cut, limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException e) {
            // Closed meanwhile: no time is left.
            wire.cut();
            return CompletableFuture.completedFuture(null);
        }
    }

    private Properties properties() {
        var properties = new Properties();
        properties.put("mail.imap.socketFactory", wire);
        properties.put("mail.imap.socketFactory.fallback", "false");
        properties.put(
                "mail.imap.connectiontimeout",
                String.valueOf(settings.timeouts().connect().toMillis()));
        properties.put(
                "mail.imap.timeout", String.valueOf(settings.timeouts().reply().toMillis()));
        boolean required = settings.tls() == Tls.STARTTLS;
        boolean wanted = required || settings.tls() == Tls.IF_OFFERED;
        properties.put("mail.imap.starttls.enable", String.valueOf(wanted));
        properties.put("mail.imap.starttls.required", String.valueOf(required));
        properties.put("mail.imap.ssl.socketFactory", Trust.in(settings.certificate()));
        // One certificate that is known by its print says more than a name.
        properties.put(
                "mail.imap.ssl.checkserveridentity",
                String.valueOf(settings.certificate().isEmpty()));
        properties.put("mail.imap.peek", "true");
        properties.put("mail.imap.fetchsize", "65536");
        properties.put("mail.imap.connectionpoolsize", "1");
        if (settings.login().tokens().isPresent()) {
            properties.put("mail.imap.auth.mechanisms", "XOAUTH2");
        }
        return properties;
    }

    /**
     * Ends a wait for what the server tells of before it lets us wait: the library takes note of it and waits all the same.
     * On a thread of the library's, for the two of the timer may be needed.
     */
    private final class Bell extends MessageCountAdapter {

        @Override
        public void messagesAdded(MessageCountEvent e) {
            if (waiting) {
                nudge();
            }
        }
    }
}
