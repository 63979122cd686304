package yardlight.channels.http;

import java.util.Optional;
import java.util.regex.Pattern;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.web.Exchanges;
import yardlight.channels.web.Limits;
import yardlight.channels.web.Reply;

/**
 * The channel {@code http-<name>}: a provider that takes one HTTP request for each message.
 *
 * <p>A send blocks for at most {@link Limits#whole()}, not counting what the machine's own resolver
 * takes to look up the host.
 */
public final class HttpChannel implements Channel {

    private static final Pattern NAME = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,28}[a-z0-9])?");
    private static final Pattern ONE = Pattern.compile("[!-~&&[^,;]]{1,254}");
    private static final Pattern DOTS = Pattern.compile("\\.+");

    private static final String CLOSED = "the channel is closed";

    private final String name;
    private final Optional<Provider> provider;
    private volatile boolean closed;
    private volatile Optional<String> trouble = Optional.empty();

    /** The provider as it is asked and understood. */
    private record Provider(HttpSettings settings, Template template, Verdict verdict, Exchanges exchanges) {}

    HttpChannel(String name, Optional<HttpSettings> settings, Exchanges exchanges) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException(
                    "name must be 1 to 30 small letters, digits and hyphens, and not begin or end with one: " + name);
        }
        this.name = "http-" + name;
        this.provider = settings.map(given -> provider(given, exchanges));
    }

    /**
     * Without settings every message is deferred.
     *
     * @param name of the provider, without {@code http-}
     * @throws IllegalArgumentException in a sentence with the property, the rule and the value, if the settings cannot be used
     */
    public static HttpChannel of(String name, Optional<HttpSettings> settings) {
        return new HttpChannel(
                name, settings, new Exchanges(settings.map(HttpSettings::limits).orElse(Limits.USUAL)));
    }

    private static Provider provider(HttpSettings settings, Exchanges exchanges) {
        Redaction redaction = Redaction.of(settings.authentication(), settings.secret());
        boolean again = settings.form().idempotencyHeader().isPresent();
        var verdict = new Verdict(settings.reading(), again, redaction::of);
        return new Provider(settings, new Template(settings), verdict, exchanges);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Attempt send(Message message) {
        return complaintAbout(message.address())
                .map(Attempt::refused)
                .or(() -> provider.map(known -> closed ? Attempt.deferred(CLOSED) : send(message, known)))
                .orElseGet(() -> Attempt.deferred(notConfigured()));
    }

    private Attempt send(Message message, Provider known) {
        Template template = known.template();
        String method = known.settings().form().method();
        Reply reply = known.exchanges().ask(template.request(message), method, template.body(message));
        Attempt attempt = known.verdict().of(reply);
        trouble = attempt.general() ? Optional.of(attempt.detail()) : Optional.empty();
        return attempt;
    }

    @Override
    public Optional<String> knock() {
        if (closed) {
            return Optional.of(CLOSED);
        }
        return provider.map(this::knock).orElse(Optional.of(notConfigured()));
    }

    private Optional<String> knock(Provider known) {
        boolean plainly = known.settings().knock().isPresent();
        Reply reply = known.exchanges().ask(known.template().knock(), plainly ? "GET" : "OPTIONS", new byte[0]);
        trouble = known.verdict().ofKnock(reply, plainly);
        return trouble;
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        Pattern pattern = provider.map(known -> known.settings().address()).orElse(ONE);
        boolean one = ONE.matcher(address).matches() && !DOTS.matcher(address).matches();
        return one && pattern.matcher(address).matches()
                ? Optional.empty()
                : Optional.of("not one address as " + name + " has them: " + address);
    }

    @Override
    public Health health() {
        return provider.map(this::health).orElse(new Health(Health.State.NOT_CONFIGURED, notConfigured()));
    }

    private Health health(Provider known) {
        String server = known.template().server();
        return trouble.map(why -> new Health(Health.State.TROUBLED, "messages wait, " + server + ": " + why))
                .orElseGet(() -> new Health(Health.State.READY, "messages go out through " + server));
    }

    private String notConfigured() {
        return "no provider is set up for " + name + ": messages wait";
    }

    @Override
    public void close() {
        closed = true;
    }
}
