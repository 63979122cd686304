package yardlight.channels.mailbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.icegreen.greenmail.store.FolderException;
import com.icegreen.greenmail.store.MailFolder;
import com.icegreen.greenmail.user.GreenMailUser;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.Flags;
import jakarta.mail.MessagingException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.channels.Health;
import yardlight.channels.Incoming;
import yardlight.channels.mail.Certificates;
import yardlight.channels.mail.MailNames;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Tls;

/** A mailbox on a server not written here: it is heard at once, and each mail is marked only after it was taken. */
class GreenMailboxIT {

    private static final Duration LONG = Duration.ofSeconds(30);
    private static final Duration POLL = Duration.ofMinutes(20);

    private final Basket inbox = new Basket();
    private GreenMail post;
    private GreenMailUser user;
    private Mailbox mailbox;

    @BeforeEach
    void open() {
        post = new GreenMail(
                new ServerSetup[] {door(0, ServerSetup.PROTOCOL_IMAP), door(0, ServerSetup.PROTOCOL_IMAPS)});
        post.start();
        user = post.setUser(Mails.OWN, "yardlight", "pass word");
    }

    @AfterEach
    void close() {
        if (mailbox != null) {
            mailbox.close();
        }
        post.stop();
    }

    @Test
    void hears_at_once_what_comes_while_it_waits_and_marks_it() throws Exception {
        listen(POLL);
        await().atMost(LONG).until(this::waits);

        lies("OK 47", new Date());

        await().atMost(LONG).until(() -> !inbox.texts.isEmpty());
        assertThat(inbox.texts).singleElement().satisfies(text -> {
            assertThat(text.text()).isEqualToIgnoringNewLines("OK 47");
            assertThat(text.from()).isEqualTo("ana@example.org");
        });
        await().atMost(LONG).until(() -> unread() == 0);
        assertThat(mailbox.health())
                .isEqualTo(new Health(
                        Health.State.READY,
                        "answers by mail are heard at localhost:"
                                + post.getImap().getPort()));
    }

    @Test
    void hears_what_had_come_before_in_its_order() throws Exception {
        lies("OK 47", new Date());
        lies("OK 48", new Date());

        listen(POLL);

        await().atMost(LONG).until(() -> inbox.texts.size() == 2);
        assertThat(inbox.texts).extracting(text -> text.text().strip()).containsExactly("OK 47", "OK 48");
    }

    @Test
    void what_is_not_taken_stays_unread_and_is_brought_again_and_keeps_nobody_behind_it() throws Exception {
        AtomicInteger refusals = new AtomicInteger();
        inbox.taking = text -> !text.text().startsWith("OK 47") || refusals.incrementAndGet() > 2;
        lies("OK 47", new Date());
        lies("OK 48", new Date());

        listen(Duration.ofMillis(200));

        await().atMost(LONG).until(() -> inbox.texts.size() == 2);
        assertThat(inbox.texts).extracting(text -> text.text().strip()).containsExactly("OK 48", "OK 47");
        assertThat(inbox.offered)
                .extracting(Incoming::id)
                .filteredOn("<1@example.org>"::equals)
                .hasSize(3);
        await().atMost(LONG).until(() -> unread() == 0);
    }

    @Test
    void what_the_inbox_fails_at_stays_unread() throws Exception {
        inbox.taking = text -> {
            throw new IllegalStateException("the database is away");
        };
        lies("OK 47", new Date());

        listen(Duration.ofMillis(200));

        await().atMost(LONG).until(() -> inbox.offered.size() >= 2);
        assertThat(unread()).isEqualTo(1);
    }

    @Test
    void what_cannot_be_read_is_left_and_keeps_nobody_behind_it() throws Exception {
        folder().store(Mails.of(
                "From: ana@example.org\nContent-Type: multipart/mixed; boundary=b\n\nno part at all\n"));
        lies("OK 48", new Date());

        listen(Duration.ofMillis(200));

        await().atMost(LONG).until(() -> inbox.texts.size() == 1);
        await().atMost(LONG).until(() -> unread() == 1);
        assertThat(folder().getMessages().get(0).getFlags().contains(Flags.Flag.SEEN))
                .isFalse();
    }

    @Test
    void what_has_lain_there_for_days_is_no_answer_any_more() throws Exception {
        lies("OK 47", Date.from(Instant.now().minus(Duration.ofDays(2))));
        lies("OK 48", new Date());

        listen(POLL);

        await().atMost(LONG).until(() -> !inbox.texts.isEmpty());
        assertThat(inbox.texts).extracting(text -> text.text().strip()).containsExactly("OK 48");
        await().atMost(LONG).until(() -> unread() == 1);
    }

    @Test
    void comes_back_when_the_server_was_away() throws Exception {
        int port = post.getImap().getPort();
        listen(POLL);
        await().atMost(LONG).until(this::waits);

        post.stop();
        await().atMost(LONG).until(() -> mailbox.health().state() == Health.State.TROUBLED);
        post = new GreenMail(door(port, ServerSetup.PROTOCOL_IMAP));
        post.start();
        user = post.setUser(Mails.OWN, "yardlight", "pass word");
        lies("OK 47", new Date());

        await().atMost(LONG).until(() -> !inbox.texts.isEmpty());
        assertThat(mailbox.health().state()).isEqualTo(Health.State.READY);
    }

    @Test
    void reads_over_TLS_with_the_certificate_that_we_expect_and_not_with_another() throws Exception {
        lies("OK 47", new Date());
        listen(secured("0".repeat(64)));
        // The server's own thread fails at it, too.
        await().dontCatchUncaughtExceptions()
                .atMost(LONG)
                .until(() -> mailbox.health().state() == Health.State.TROUBLED);
        assertThat(mailbox.health().sentence()).contains("another certificate");
        mailbox.close();

        listen(secured(Certificates.fingerprint()));

        await().dontCatchUncaughtExceptions().atMost(LONG).until(() -> !inbox.texts.isEmpty());
    }

    @Test
    void says_that_the_password_is_wrong_without_saying_it() {
        listen(Mailboxes.with(post.getImap().getPort(), new Login("yardlight", "hunter2"), Mailboxes.PATIENT, POLL));

        await().atMost(LONG).until(() -> mailbox.health().state() == Health.State.TROUBLED);
        assertThat(mailbox.health().sentence())
                .contains("the login was not taken")
                .doesNotContain("hunter2");
    }

    private static ServerSetup door(int port, String protocol) {
        var door = new ServerSetup(port, "127.0.0.1", protocol);
        door.setServerStartupTimeout(LONG.toMillis());
        return door;
    }

    private MailboxSettings secured(String certificate) {
        return Mailboxes.with(
                post.getImaps().getPort(),
                Tls.IMPLICIT,
                Optional.of(certificate),
                Mailboxes.LOGIN,
                Mailboxes.PATIENT,
                POLL);
    }

    private void listen(Duration poll) {
        listen(Mailboxes.with(post.getImap().getPort(), Mailboxes.LOGIN, Mailboxes.PATIENT, poll));
    }

    private void listen(MailboxSettings settings) {
        mailbox = Mailbox.of(
                settings,
                new MailNames(new byte[] {1}),
                from -> Optional.of(new KnownLines.Known("mail", from)),
                InstantSource.system(),
                Mailboxes.ALONE);
        mailbox.listen(inbox);
    }

    /** Once the server has somebody who listens to the folder. */
    private boolean waits() {
        return mailbox.health().state() == Health.State.READY
                && Thread.getAllStackTraces().entrySet().stream()
                        .anyMatch(one -> one.getKey().getName().equals("mailbox")
                                && List.of(one.getValue()).toString().contains(".idle("));
    }

    private void lies(String words, Date at) throws MessagingException, FolderException {
        int number = folder().getMessageCount() + 1;
        folder().appendMessage(
                        Mails.of(Mails.from("ana@example.org", "", words)
                                .replace("<m1@mail.example>", "<" + number + "@example.org>")),
                        new Flags(),
                        at);
    }

    private long unread() throws FolderException {
        return folder().getUnseenCount();
    }

    private MailFolder folder() throws FolderException {
        return post.getManagers().getImapHostManager().getInbox(user);
    }
}
