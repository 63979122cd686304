package yardlight.gateway.passkeys;

import java.net.URI;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The one address at which passkeys work: browsers tie them to a name, and to https everywhere but at home. It is
 * {@code yardlight.public-url}; without one it is this machine's own, {@code localhost}.
 */
@Component
class PasskeyAddress {

    private static final String HOME = "localhost";

    private final Optional<URI> address;

    PasskeyAddress(@Value("${yardlight.public-url:}") String publicUrl, @Value("${server.port:8080}") String port) {
        String url = publicUrl.strip().replaceAll("/+$", "");
        this.address = url.isEmpty() ? Optional.of(URI.create("http://" + HOME + ":" + port)) : fit(url);
    }

    private static Optional<URI> fit(String url) {
        try {
            URI uri = URI.create(url);
            String host = Optional.ofNullable(uri.getHost()).orElse("");
            boolean named = !host.isEmpty() && !host.startsWith("[") && !host.matches("[0-9.]+");
            boolean safe = "https".equals(uri.getScheme()) || host.equals(HOME);
            return named && safe ? Optional.of(uri) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether there is such an address; there is none where the public one is a bare number or plain http. */
    boolean isThere() {
        return address.isPresent();
    }

    /** The relying party's id. */
    String host() {
        return address.map(URI::getHost).orElse("");
    }

    /** As browsers send it: scheme, host, and the port unless it goes without saying. */
    String origin() {
        return address.map(uri -> uri.getScheme() + "://" + uri.getAuthority()).orElse("");
    }
}
