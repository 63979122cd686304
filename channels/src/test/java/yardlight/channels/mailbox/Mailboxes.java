package yardlight.channels.mailbox;

import java.time.Duration;
import java.util.Optional;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;

/** Settings for servers of this machine. */
final class Mailboxes {

    /** Long enough for a machine under load where a test does not wait for it to pass. */
    static final Timeouts PATIENT =
            new Timeouts(Duration.ofSeconds(10), Duration.ofSeconds(20), Duration.ofSeconds(30));

    static final Timeouts SHORT = new Timeouts(Duration.ofSeconds(2), Duration.ofMillis(700), Duration.ofMillis(1_500));

    static final Login LOGIN = new Login("yardlight", "pass word");

    /** Of a gateway that shares it with no other. */
    static final Turn ALONE = new Turn() {
        @Override
        public boolean mine() {
            return true;
        }

        @Override
        public void leave() {}
    };

    private Mailboxes() {}

    static MailboxSettings at(int port) {
        return with(port, LOGIN, PATIENT, Duration.ofMinutes(10));
    }

    static MailboxSettings with(int port, Login login, Timeouts timeouts, Duration poll) {
        return with(port, Tls.NONE, Optional.empty(), login, timeouts, poll);
    }

    static MailboxSettings with(
            int port, Tls tls, Optional<String> certificate, Login login, Timeouts timeouts, Duration poll) {
        return new MailboxSettings(
                "localhost",
                port,
                tls,
                login,
                certificate,
                "INBOX",
                Mails.OWN,
                poll,
                Optional.of("mx.yardlight.example"),
                timeouts);
    }
}
