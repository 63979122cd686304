package yardlight.channels.mail;

import jakarta.mail.MessagingException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.security.GeneralSecurityException;
import java.time.Duration;
import javax.net.ssl.SSLException;
import yardlight.channels.oauth.NoToken;

/** Says in words what went wrong when it was not the server that said it. */
final class Trouble {

    private Trouble() {}

    static String words(Exception e, Stage stage, MailSettings settings) {
        Throwable cause = innermost(e);
        String server = settings.server();
        if (cause instanceof NoToken) {
            return "no login at " + server + ": " + message(cause);
        }
        if (cause instanceof UnknownHostException) {
            return "no host is known as " + settings.host();
        }
        if (cause instanceof SSLException || cause instanceof GeneralSecurityException) {
            return "no TLS with " + server + ": " + message(cause);
        }
        if (cause instanceof SocketTimeoutException && stage != Stage.GREETING) {
            return "no answer to " + stage.step() + " within "
                    + seconds(settings.timeouts().reply());
        }
        if (cause instanceof IOException && stage == Stage.GREETING) {
            return server + " cannot be reached: " + message(cause);
        }
        if (e instanceof MessagingException && message(e).contains("[EOF]")) {
            return server + " hung up at " + stage.step();
        }
        return "at " + stage.step() + ": " + message(cause);
    }

    static String outOfTime(Stage stage, MailSettings settings) {
        return "given up at " + stage.step() + " after "
                + seconds(settings.timeouts().whole());
    }

    private static Throwable innermost(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        return cause;
    }

    private static String message(Throwable e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static String seconds(Duration length) {
        return length.toMillis() % 1000 == 0 ? length.toSeconds() + " s" : length.toMillis() + " ms";
    }
}
