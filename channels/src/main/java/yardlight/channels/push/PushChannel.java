package yardlight.channels.push;

import com.interaso.webpush.WebPush;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpRequest;
import java.util.Arrays;
import java.util.Optional;
import yardlight.channels.Attempt;
import yardlight.channels.Channel;
import yardlight.channels.Health;
import yardlight.channels.Message;
import yardlight.channels.web.Endpoint;
import yardlight.channels.web.Exchanges;
import yardlight.channels.web.Neighbours;
import yardlight.channels.web.Reply;

/**
 * The channel {@code push}: a note on a phone whose browser subscribed, by way of the service that the browser named. What
 * is in it only the browser can read.
 *
 * <p>A send blocks for at most {@link yardlight.channels.web.Limits#whole()}, not counting what the machine's own resolver
 * takes to look up the host.
 */
public final class PushChannel implements Channel {

    /** Looks a name up. */
    interface Resolver {
        InetAddress[] addresses(String host) throws UnknownHostException;
    }

    private static final String NAME = "push";
    private static final String NOT_CONFIGURED = "push is not set up: messages wait";
    private static final String CLOSED = "the channel is closed";
    private static final int NOT_IMPLEMENTED = 501;

    private final Optional<Desk> desk;
    private final Resolver resolver;
    private volatile boolean closed;
    private volatile Optional<String> trouble = Optional.empty();
    private final Services services = new Services();

    /** All that it takes to send. */
    private record Desk(PushSettings settings, WebPush library, Exchanges exchanges) {}

    PushChannel(Optional<PushSettings> settings, Resolver resolver) {
        this.resolver = resolver;
        this.desk = settings.map(given ->
                new Desk(given, new WebPush(given.contact(), given.key().keys()), new Exchanges(given.limits())));
    }

    /** Without settings every message is deferred. */
    public static PushChannel of(Optional<PushSettings> settings) {
        return new PushChannel(settings, InetAddress::getAllByName);
    }

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public Attempt send(Message message) {
        Optional<Subscription> subscription = subscription(message.address());
        if (subscription.isEmpty()) {
            return Attempt.refused(complaint(message.address()));
        }
        return desk.map(set -> closed ? Attempt.deferred(CLOSED) : send(message, subscription.get(), set))
                .orElseGet(() -> Attempt.deferred(NOT_CONFIGURED));
    }

    private Attempt send(Message message, Subscription subscription, Desk set) {
        URI endpoint = subscription.endpoint();
        Attempt attempt = services.heard(
                endpoint.resolve("/"),
                inTheWay(endpoint, set).orElseGet(() -> Verdict.of(handOver(message, subscription, set))));
        trouble = attempt.general() ? Optional.of(attempt.detail()) : Optional.empty();
        return attempt;
    }

    private static Reply handOver(Message message, Subscription subscription, Desk set) {
        byte[] sealed = set.library().getBody(Note.of(message), subscription.key(), subscription.secret());
        return set.exchanges().ask(request(message, subscription, set), "POST", sealed);
    }

    private static HttpRequest.Builder request(Message message, Subscription subscription, Desk set) {
        HttpRequest.Builder request = HttpRequest.newBuilder(subscription.endpoint());
        set.library()
                .getHeaders(
                        subscription.endpoint().toString(),
                        Math.toIntExact(set.settings().life().toSeconds()),
                        Note.topic(message.id()),
                        WebPush.Urgency.High)
                .forEach(request::setHeader);
        return request.setHeader("User-Agent", "yardlight");
    }

    /**
     * What keeps us from asking this host. The JDK remembers for half a minute where a name leads, so it is asked where it was
     * looked up; and should it lead elsewhere by then, whoever is there must show a certificate in its name before it
     * hears anything.
     */
    private Optional<Attempt> inTheWay(URI endpoint, Desk set) {
        if (set.settings().loopback() && Endpoint.isHere(endpoint)) {
            return Optional.empty();
        }
        if (set.settings().own().filter(endpoint.getHost()::equalsIgnoreCase).isPresent()) {
            return Optional.of(Attempt.refused("an endpoint that leads back to this gateway: " + endpoint.getHost()));
        }
        try {
            boolean internal = Arrays.stream(resolver.addresses(endpoint.getHost()))
                    .anyMatch(address -> Neighbours.include(address) || isOfThisMachine(address));
            return internal
                    ? Optional.of(Attempt.refused("an endpoint that leads to a network of ours: " + endpoint.getHost()))
                    : Optional.empty();
        } catch (UnknownHostException e) {
            return Optional.of(Attempt.deferred("no host is known as " + endpoint.getHost())
                    .forEveryMessage());
        }
    }

    /** A machine in the open has a public address, and behind it perhaps what is meant for itself only. */
    private static boolean isOfThisMachine(InetAddress address) {
        try {
            return NetworkInterface.getByInetAddress(address) != null;
        } catch (SocketException e) {
            return true;
        }
    }

    /** Goes to a service that has taken something before, each in its turn; nothing is known against any while there is none. */
    @Override
    public Optional<String> knock() {
        if (closed) {
            return Optional.of(CLOSED);
        }
        if (desk.isEmpty()) {
            return Optional.of(NOT_CONFIGURED);
        }
        trouble = services.next().flatMap(service -> knock(service, desk.get()));
        return trouble;
    }

    private Optional<String> knock(URI service, Desk set) {
        Optional<String> why = inTheWay(service, set).map(Attempt::detail).or(() -> silent(set, service));
        if (why.isEmpty()) {
            services.answered(service);
        }
        return why;
    }

    private static Optional<String> silent(Desk set, URI service) {
        Reply reply = set.exchanges().ask(HttpRequest.newBuilder(service), "OPTIONS", new byte[0]);
        if (reply instanceof Reply.Answer answer) {
            boolean there = answer.status() < 500 || answer.status() == NOT_IMPLEMENTED;
            return there ? Optional.empty() : Optional.of(Verdict.of(answer).detail());
        }
        return Optional.of(((Reply.Silence) reply).why());
    }

    @Override
    public Optional<String> complaintAbout(String address) {
        return subscription(address).isPresent() ? Optional.empty() : Optional.of(complaint(address));
    }

    private Optional<Subscription> subscription(String address) {
        // While nothing is sent, one on this machine does no harm.
        return Subscription.of(
                address, desk.map(set -> set.settings().loopback()).orElse(true));
    }

    private static String complaint(String address) {
        return "not a subscription as endpoint|p256dh|auth with a public https endpoint: " + address;
    }

    @Override
    public Health health() {
        if (desk.isEmpty()) {
            return new Health(Health.State.NOT_CONFIGURED, NOT_CONFIGURED);
        }
        return trouble.map(why -> new Health(Health.State.TROUBLED, "push waits: " + why))
                .orElseGet(() -> new Health(Health.State.READY, "push goes out to browsers that subscribed"));
    }

    @Override
    public void close() {
        closed = true;
    }
}
