package yardlight.channels.mail;

import java.time.Duration;
import java.util.Optional;
import yardlight.channels.mail.MailSettings.Login;
import yardlight.channels.mail.MailSettings.Timeouts;
import yardlight.channels.mail.MailSettings.Tls;

/** Settings for servers of this machine, with the patience of a test. */
final class Settings {

    static final String FROM = "yardlight@ranch.example";

    /** Long enough for a machine under load where a test does not wait for it to pass. */
    static final Timeouts PATIENT =
            new Timeouts(Duration.ofSeconds(10), Duration.ofSeconds(20), Duration.ofSeconds(30));

    private Settings() {}

    static MailSettings plain(int port) {
        return with(port, PATIENT);
    }

    static MailSettings with(int port, Timeouts timeouts) {
        return new MailSettings("localhost", port, Tls.NONE, Optional.empty(), FROM, timeouts, Optional.empty());
    }

    static MailSettings with(int port, Tls tls, Optional<Login> login, Optional<String> certificate) {
        return new MailSettings("localhost", port, tls, login, FROM, PATIENT, certificate);
    }
}
