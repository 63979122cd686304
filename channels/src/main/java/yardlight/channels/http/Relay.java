package yardlight.channels.http;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Pattern;
import yardlight.channels.Attempt;
import yardlight.channels.Message;
import yardlight.channels.web.Limits;

/**
 * A relay at a site that is asked to shut in by one HTTP request: the template, the answers and the care of a provider of
 * texts. Redirects are not followed, and a request that is sent again has the same id.
 *
 * <p>In the template {@code {id}} is the request, {@code {to}} the site, {@code {at}} when it was asked for, and {@code
 * {text}} until when it may be done, exclusive.
 */
public final class Relay implements AutoCloseable {

    /** One try takes no longer, so that none arrives after the request has expired. */
    public static final Duration LONGEST = Duration.ofSeconds(8);

    private static final String ID_HEADER = "Idempotency-Key";
    private static final Pattern ANY_SITE = Pattern.compile("[a-z0-9-]{1,64}");

    /** The relay answered, and may have done it nevertheless, or is still about it. */
    private static final Pattern MAY_BE_DONE = Pattern.compile("(5\\d\\d|408|409|425)\\b.*");

    private final String name;
    private final HttpChannel channel;

    private Relay(String name, HttpChannel channel) {
        this.name = name;
        this.channel = channel;
    }

    /** @throws IllegalArgumentException in a sentence with the property, the rule and the value */
    public static Relay of(String name, HttpSettings settings) {
        return new Relay(name, HttpChannel.of(name, Optional.of(bounded(settings))));
    }

    private static HttpSettings bounded(HttpSettings given) {
        HttpSettings.Form form = given.form();
        return new HttpSettings(
                new HttpSettings.Form(
                        form.method(),
                        form.url(),
                        form.headers(),
                        form.contentType(),
                        form.body(),
                        form.idempotencyHeader().or(() -> Optional.of(ID_HEADER))),
                given.authentication(),
                given.secret(),
                given.reading(),
                ANY_SITE,
                given.knock(),
                new Limits(
                        shorter(given.limits().connect()),
                        shorter(given.limits().whole())));
    }

    private static Duration shorter(Duration length) {
        return length.compareTo(LONGEST) < 0 ? length : LONGEST;
    }

    public String name() {
        return name;
    }

    /**
     * Asks; blocks for at most {@link #LONGEST}. {@code UNKNOWN} when it may have been taken; {@code DEFERRED} only when it
     * surely was not.
     */
    public Attempt ask(String id, String site, Instant at, Instant until) {
        Attempt attempt = channel.send(new Message(id, site, until.toString(), at));
        boolean maybe = attempt.outcome() == Attempt.Outcome.DEFERRED
                && MAY_BE_DONE.matcher(attempt.detail()).matches();
        return maybe ? Attempt.unknown(attempt.detail()) : attempt;
    }

    @Override
    public void close() {
        channel.close();
    }
}
