package yardlight.channels.web;

import java.net.http.HttpClient;
import java.net.http.HttpClient.Redirect;
import java.net.http.HttpClient.Version;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;

/**
 * The JDK's client, and another one after a pause. Its connections stay open for minutes, and a router on the way may
 * have forgotten one without telling: the next message would then be lost in it until its time is over, and nobody could
 * say whether it was taken. A client that is let go of ends by itself.
 */
final class Clients {

    /** Shorter than servers and routers on the way wait as a rule. */
    static final Duration PAUSE = Duration.ofSeconds(5);

    private final Limits limits;
    private final Optional<SSLContext> tls;
    private final Duration pause;
    private final Executor hands;
    private HttpClient current;
    private long used;

    /** @param pause how long a client may have been idle */
    Clients(Limits limits, Optional<SSLContext> tls, Duration pause) {
        this.limits = limits;
        this.tls = tls;
        this.pause = pause;
        this.hands =
                new ThreadPoolExecutor(0, Integer.MAX_VALUE, 10, TimeUnit.SECONDS, new SynchronousQueue<>(), work -> {
                    Thread thread = new Thread(work, "web");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    synchronized HttpClient client() {
        long now = System.nanoTime();
        if (current == null || now - used > pause.toNanos()) {
            current = make();
        }
        used = now;
        return current;
    }

    private HttpClient make() {
        HttpClient.Builder builder = HttpClient.newBuilder()
                .version(Version.HTTP_1_1)
                .followRedirects(Redirect.NEVER)
                .connectTimeout(limits.connect())
                .executor(hands);
        tls.ifPresent(builder::sslContext);
        return builder.build();
    }
}
