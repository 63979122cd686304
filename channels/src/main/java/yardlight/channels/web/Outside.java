package yardlight.channels.web;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * Fetches a small file from an address that somebody typed. It could name a machine that only this one can reach: so it must be
 * a public name over {@code https}, every address that the name leads to must be of the public internet, and no redirect is
 * followed. Blocks for at most {@link Limits#whole()}, not counting what the machine's own resolver takes.
 */
public final class Outside {

    /** Looks a name up. */
    interface Resolver {
        InetAddress[] addresses(String host) throws UnknownHostException;
    }

    private static final int OK = 200;

    private final Exchanges exchanges;
    private final Resolver resolver;

    /** @param most of the file, in bytes */
    public Outside(Limits limits, int most) {
        this(new Exchanges(limits, Optional.empty(), most), InetAddress::getAllByName);
    }

    Outside(Exchanges exchanges, Resolver resolver) {
        this.exchanges = exchanges;
        this.resolver = resolver;
    }

    /** What came of it. */
    public sealed interface Fetched {

        /** All of it, as text in UTF-8. */
        record Text(String text) implements Fetched {}

        /** Nothing of use. */
        record Nothing(Why why) implements Fetched {}
    }

    /** Why there is nothing. */
    public enum Why {
        /** It is no address that may be asked. */
        NOT_PUBLIC,
        /** Nobody answered. */
        SILENCE,
        /** The answer was another one than the file. */
        REFUSED,
        TOO_LONG
    }

    public Fetched get(String address) {
        Optional<URI> checked = Endpoint.of(address.strip().replaceFirst("^(?i)webcal://", "https://"), false);
        if (checked.isEmpty() || inside(checked.get().getHost())) {
            return new Fetched.Nothing(Why.NOT_PUBLIC);
        }
        HttpRequest.Builder request = HttpRequest.newBuilder(checked.get())
                .setHeader("User-Agent", "yardlight")
                .setHeader("Accept", "text/calendar");
        return exchanges.ask(request, "GET", new byte[0]) instanceof Reply.Answer answer
                ? read(answer)
                : new Fetched.Nothing(Why.SILENCE);
    }

    private static Fetched read(Reply.Answer answer) {
        if (answer.status() != OK) {
            return new Fetched.Nothing(Why.REFUSED);
        }
        return answer.whole()
                ? new Fetched.Text(new String(answer.body(), StandardCharsets.UTF_8))
                : new Fetched.Nothing(Why.TOO_LONG);
    }

    /** A name that nobody knows leads nowhere; it is asked for all the same, and nobody answers. */
    private boolean inside(String host) {
        try {
            return Arrays.stream(resolver.addresses(host)).anyMatch(Neighbours::include);
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
