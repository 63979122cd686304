package yardlight.channels.http;

import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import yardlight.channels.Message;

/** The request of a provider, checked once and filled for each message. */
final class Template {

    /** A header is one line of ASCII, and these are by their nature. */
    private static final Set<Placeholder> IN_HEADER = EnumSet.of(Placeholder.TO, Placeholder.ID, Placeholder.AT);

    /** They have properties of their own. */
    private static final Set<String> ELSEWHERE = Set.of("content-type", "authorization");

    private final HttpSettings settings;
    private final Address url;
    private final URI knock;
    private final Optional<Body> body;

    Template(HttpSettings settings) {
        HttpSettings.Form form = settings.form();
        this.settings = settings;
        this.url = Address.of("url", form.url());
        this.knock = settings.knock().map(Template::knock).orElse(url.bare());
        this.body = form.body().isEmpty() ? Optional.empty() : Optional.of(Body.of(form.contentType(), form.body()));
        form.headers().forEach(Template::check);
        form.idempotencyHeader().ifPresent(name -> HeaderNames.check("idempotency-header", name));
    }

    private static URI knock(String address) {
        Placeholder.count("knock-url", address, Set.of());
        Address.of("knock-url", address);
        return URI.create(address);
    }

    private static void check(String name, String value) {
        String property = "headers." + name;
        HeaderNames.check(property, name);
        if (ELSEWHERE.contains(name.toLowerCase(Locale.ROOT))) {
            throw new IllegalArgumentException(
                    property + " must be left out: there are content-type and authentication for it");
        }
        if (value.chars().anyMatch(c -> c < ' ' || c > '~')) {
            throw new IllegalArgumentException(property + " must be one line of ASCII: " + value);
        }
        Placeholder.count(property, value, IN_HEADER);
    }

    String server() {
        return url.server();
    }

    byte[] body(Message message) {
        return body.map(form -> form.fill(values(message)).getBytes(StandardCharsets.UTF_8))
                .orElse(new byte[0]);
    }

    HttpRequest.Builder request(Message message) {
        Values values = values(message);
        HttpSettings.Form form = settings.form();
        HttpRequest.Builder request = HttpRequest.newBuilder(url.fill(values));
        for (Map.Entry<String, String> header : form.headers().entrySet()) {
            request.setHeader(header.getKey(), Placeholder.fill(header.getValue(), values, UnaryOperator.identity()));
        }
        form.idempotencyHeader().ifPresent(name -> request.setHeader(name, message.id()));
        if (body.isPresent()) {
            request.setHeader("Content-Type", form.contentType());
        }
        return authenticated(request);
    }

    /** What is asked to see whether the provider is there. */
    HttpRequest.Builder knock() {
        return authenticated(HttpRequest.newBuilder(knock));
    }

    private HttpRequest.Builder authenticated(HttpRequest.Builder request) {
        request.setHeader("User-Agent", "yardlight");
        settings.authentication().ifPresent(known -> request.setHeader(known.header(), known.value()));
        return request;
    }

    private Values values(Message message) {
        return Values.of(message, settings.secret().map(Secret::value).orElse(""));
    }
}
