package yardlight.channels.web;

import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpConnectTimeoutException;
import java.nio.channels.UnresolvedAddressException;
import java.time.Duration;
import javax.net.ssl.SSLException;

/** Says in words what went wrong when it was not the other side that said it. */
final class Trouble {

    private Trouble() {}

    static String words(Throwable trouble, URI address, Limits limits) {
        String host = address.getHost();
        if (isOf(trouble, UnresolvedAddressException.class)) {
            return "no host is known as " + host;
        }
        if (isOf(trouble, HttpConnectTimeoutException.class)) {
            return host + " cannot be reached within " + seconds(limits.connect());
        }
        if (isOf(trouble, ConnectException.class)) {
            return host + " cannot be reached: " + message(innermost(trouble));
        }
        if (isOf(trouble, SSLException.class)) {
            return "no TLS with " + host + ": " + message(innermost(trouble));
        }
        if (message(trouble).contains("received no bytes") || isOf(trouble, IllegalStateException.class)) {
            return host + " hung up without an answer";
        }
        return host + ": " + message(trouble);
    }

    static boolean isOf(Throwable trouble, Class<? extends Throwable> kind) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            if (kind.isInstance(cause)) {
                return true;
            }
        }
        return false;
    }

    private static Throwable innermost(Throwable trouble) {
        Throwable cause = trouble;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause;
    }

    private static String message(Throwable trouble) {
        return trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
    }

    static String seconds(Duration length) {
        return length.toMillis() % 1000 == 0 ? length.toSeconds() + " s" : length.toMillis() + " ms";
    }
}
