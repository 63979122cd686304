package yardlight.channels.mailbox;

import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.security.GeneralSecurityException;
import javax.net.ssl.SSLException;
import yardlight.channels.oauth.NoToken;

/** Says in words why a mailbox is not read. */
final class Trouble {

    private Trouble() {}

    /** @param cut whether we ended it because it took too long */
    static String words(Exception e, boolean cut, MailboxSettings settings) {
        Throwable cause = e;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        String message = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        if (cause instanceof NoToken) {
            return "no login: " + message;
        }
        if (cut) {
            return "given up after " + settings.timeouts().whole().toSeconds() + " s";
        }
        if (cause instanceof UnknownHostException) {
            return "no host is known as " + settings.host();
        }
        if (cause instanceof SSLException || cause instanceof GeneralSecurityException) {
            return "no TLS: " + message;
        }
        if (cause instanceof SocketTimeoutException) {
            return "no answer in time: " + message;
        }
        return message;
    }
}
