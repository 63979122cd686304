package yardlight.channels.web;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;

/**
 * Asks a server one thing at a time and comes back in bounded time with what came of it. May be used by any number of
 * threads at once. HTTP/1.1; certificates are verified, redirects are not followed, nothing is sent a second time.
 */
public final class Exchanges {

    /** Of an answer's body, in bytes; the rest is not read. */
    public static final int MOST_BODY = 65_536;

    private final Limits limits;
    private final Clients clients;
    private final int most;

    /** Trusts the authorities that this machine trusts. */
    public Exchanges(Limits limits) {
        this(limits, Optional.empty());
    }

    /** @param tls who is trusted instead */
    public Exchanges(Limits limits, Optional<SSLContext> tls) {
        this(limits, tls, MOST_BODY);
    }

    /** @param most of an answer's body, in bytes; the rest is not read */
    Exchanges(Limits limits, Optional<SSLContext> tls, int most) {
        this.most = most;
        this.limits = limits;
        this.clients = new Clients(limits, tls, Clients.PAUSE);
    }

    /**
     * Blocks until there is an answer or the time is over.
     *
     * @param request with address and headers, and without a method
     * @param body may be empty
     */
    public Reply ask(HttpRequest.Builder request, String method, byte[] body) {
        var once = new Once(body);
        var hearing = new Hearing(most);
        HttpRequest asked = request.method(method, once).build();
        HttpClient client = clients.client();
        CompletableFuture<?> answer = client.sendAsync(asked, hearing);
        Optional<String> trouble = await(answer, asked.uri());
        boolean sent = once.sent() && !isHandshake(answer);
        return hearing.answer().<Reply>map(heard -> heard).orElseGet(() -> new Reply.Silence(sent, trouble.orElse("")));
    }

    private Optional<String> await(CompletableFuture<?> answer, URI address) {
        try {
            answer.get(limits.whole().toNanos(), TimeUnit.NANOSECONDS);
            return Optional.empty();
        } catch (ExecutionException e) {
            return Optional.of(Trouble.words(e.getCause(), address, limits));
        } catch (TimeoutException e) {
            answer.cancel(true);
            return Optional.of("no answer from " + address.getHost() + " within " + Trouble.seconds(limits.whole()));
        } catch (InterruptedException e) {
            answer.cancel(true);
            Thread.currentThread().interrupt();
            return Optional.of("interrupted");
        }
    }

    /** Nothing of a request goes out before TLS is agreed on (RFC 8446 2: early data is another matter, and not sent here). */
    private static boolean isHandshake(CompletableFuture<?> answer) {
        return answer.isCompletedExceptionally()
                && answer.handle((nothing, trouble) -> Trouble.isOf(trouble, SSLHandshakeException.class))
                        .join();
    }
}
