package yardlight.channels.oauth;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import yardlight.channels.web.Exchanges;

/**
 * Tokens from a token endpoint, by a refresh token (RFC 6749 6) or by the client's own credentials (4.4). A token is used until
 * a fifth of its life is left, at most five minutes of it, and then got anew; while the endpoint is away it is used to its end.
 *
 * <p>Blocks for at most the {@linkplain EndpointSettings#limits() limits}.
 */
public final class TokenEndpoint implements Tokens {

    private static final Logger LOG = LoggerFactory.getLogger(TokenEndpoint.class);

    private static final Duration MOST_LEFT = Duration.ofMinutes(5);
    private static final int LEFT = 5;

    /** After a failure nobody is asked for so long; who needs a token meanwhile hears the same. */
    private static final Duration PAUSE = Duration.ofSeconds(5);

    private final EndpointSettings settings;
    private final Exchanges exchanges;
    private final Optional<SecretFile> file;
    private Optional<String> rotated = Optional.empty();
    private Optional<Held> held = Optional.empty();
    private Optional<Failed> failed = Optional.empty();

    /** Both in the time of {@link System#nanoTime()}. */
    private record Held(String token, long renewAt, long endsAt) {}

    private record Failed(String why, long at) {}

    public TokenEndpoint(EndpointSettings settings) {
        this(settings, new Exchanges(settings.limits()));
    }

    TokenEndpoint(EndpointSettings settings, Exchanges exchanges) {
        this.settings = settings;
        this.exchanges = exchanges;
        this.file = settings.refreshToken().map(SecretFile::new);
    }

    @Override
    public synchronized String token() throws NoToken {
        long now = System.nanoTime();
        if (held.isPresent() && held.get().renewAt() - now > 0) {
            return held.get().token();
        }
        try {
            return renewed(now);
        } catch (NoToken e) {
            if (held.isPresent() && held.get().endsAt() - now > 0) {
                LOG.warn("a token is used to its end: {}", e.getMessage());
                return held.get().token();
            }
            throw e;
        }
    }

    @Override
    public synchronized void refused(String token) {
        held = held.filter(one -> !one.token().equals(token));
    }

    private String renewed(long now) throws NoToken {
        if (failed.isPresent() && now - failed.get().at() < PAUSE.toNanos()) {
            throw new NoToken(failed.get().why());
        }
        try {
            Grant grant = Grant.of(exchanges.ask(request(), "POST", form()));
            failed = Optional.empty();
            grant.refreshToken().ifPresent(this::keep);
            Duration life = grant.life();
            Duration left = life.dividedBy(LEFT);
            Duration early = left.compareTo(MOST_LEFT) < 0 ? left : MOST_LEFT;
            long got = System.nanoTime();
            held = Optional.of(new Held(grant.token(), got + life.minus(early).toNanos(), got + life.toNanos()));
            return grant.token();
        } catch (NoToken e) {
            failed = Optional.of(new Failed(e.getMessage(), System.nanoTime()));
            throw e;
        }
    }

    /** RFC 6749 2.3.1: a client with a secret shows it as in HTTP's basic scheme, which every endpoint must take. */
    private HttpRequest.Builder request() {
        HttpRequest.Builder request = HttpRequest.newBuilder(settings.address())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Accept", "application/json");
        settings.clientSecret().ifPresent(secret -> {
            String pair = encoded(settings.clientId()) + ":" + encoded(secret);
            String basic = Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.US_ASCII));
            request.header("Authorization", "Basic " + basic);
        });
        return request;
    }

    private byte[] form() throws NoToken {
        var fields = new LinkedHashMap<String, String>();
        if (file.isPresent()) {
            fields.put("grant_type", "refresh_token");
            fields.put(
                    "refresh_token",
                    rotated.isPresent() ? rotated.get() : file.get().read());
        } else {
            fields.put("grant_type", "client_credentials");
        }
        settings.scope().ifPresent(scope -> fields.put("scope", scope));
        if (settings.clientSecret().isEmpty()) {
            fields.put("client_id", settings.clientId());
        }
        return fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"))
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** The one before may be good for nothing from now on, so it is kept where the next start looks for it. */
    private void keep(String refreshToken) {
        try {
            if (file.isPresent() && !refreshToken.equals(rotated.orElse(null))) {
                file.get().replace(refreshToken);
                rotated = Optional.empty();
            }
        } catch (IOException e) {
            rotated = Optional.of(refreshToken);
            LOG.warn(
                    "the new refresh token cannot be written to {}: after a restart somebody may have to sign in again: {}",
                    file.get().path(),
                    e.toString());
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
