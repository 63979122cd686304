package yardlight.channels.oauth;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import yardlight.channels.web.Limits;

/**
 * A token endpoint, and who we are there. Its text form keeps the secrets back.
 *
 * @param address {@code https}, or {@code http} to this machine only; without a fragment (RFC 6749 3.2)
 * @param clientSecret empty for a client that has none
 * @param scope as the provider names it, if it wants one
 * @param refreshToken the file with the refresh token; where the provider gives a new one it is written there. Empty: the
 *     client asks for itself (RFC 6749 4.4)
 */
public record EndpointSettings(
        URI address,
        String clientId,
        Optional<String> clientSecret,
        Optional<String> scope,
        Optional<Path> refreshToken,
        Limits limits) {

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

    public EndpointSettings {
        boolean https = "https".equals(address.getScheme());
        boolean here = "http".equals(address.getScheme()) && THIS_MACHINE.contains(String.valueOf(address.getHost()));
        if (address.getHost() == null
                || !(https || here)
                || address.getUserInfo() != null
                || address.getFragment() != null) {
            throw new IllegalArgumentException(
                    "token endpoint must be a whole https address without a login and without #, or http to this machine: "
                            + address);
        }
        if (clientId.isBlank()) {
            throw new IllegalArgumentException("client id must not be empty");
        }
        if (refreshToken.isEmpty() && clientSecret.isEmpty()) {
            throw new IllegalArgumentException("a client without a refresh token must have a secret: " + clientId);
        }
    }

    @Override
    public String toString() {
        return "EndpointSettings[" + address.getAuthority() + " " + clientId + "]";
    }
}
