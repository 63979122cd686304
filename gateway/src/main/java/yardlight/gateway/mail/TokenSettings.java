package yardlight.gateway.mail;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.boot.context.properties.ConfigurationProperties;
import yardlight.channels.oauth.EndpointSettings;
import yardlight.channels.oauth.TokenEndpoint;
import yardlight.channels.oauth.TokenFile;
import yardlight.channels.oauth.Tokens;
import yardlight.channels.web.Limits;
import yardlight.gateway.settings.SecretText;

/**
 * Where tokens of OAuth 2.0 come from, for logins with a name and without a password. Its text form keeps the secrets back.
 *
 * @param tokenFile a file that somebody else keeps a good token in; instead of the rest
 * @param refreshTokenFile without it the client asks for itself
 */
@ConfigurationProperties("yardlight.mail.oauth")
record TokenSettings(
        Optional<String> tokenFile,
        Optional<String> tokenEndpoint,
        Optional<String> clientId,
        Optional<String> clientSecret,
        Optional<String> clientSecretFile,
        Optional<String> refreshTokenFile,
        Optional<String> scope) {

    /**
     * Empty when nothing of it is set.
     *
     * @throws IllegalArgumentException in a sentence about the property
     */
    Optional<Tokens> tokens() {
        Optional<Tokens> file = given(tokenFile).map(Path::of).map(TokenFile::new);
        Optional<Tokens> endpoint = given(tokenEndpoint).map(this::endpoint);
        if (file.isPresent() && endpoint.isPresent()) {
            throw new IllegalArgumentException(
                    "token-file must not be set together with token-endpoint: " + tokenFile.get());
        }
        if (file.isEmpty()
                && endpoint.isEmpty()
                && Stream.of(clientId, refreshTokenFile).anyMatch(Optional::isPresent)) {
            throw new IllegalArgumentException("token-endpoint must be set beside client-id and refresh-token-file");
        }
        return file.or(() -> endpoint);
    }

    private Tokens endpoint(String address) {
        return new TokenEndpoint(new EndpointSettings(
                URI.create(address),
                given(clientId).orElse(""),
                SecretText.of("client-secret", clientSecret, clientSecretFile),
                given(scope),
                given(refreshTokenFile).map(Path::of),
                Limits.USUAL));
    }

    private static Optional<String> given(Optional<String> text) {
        return text.filter(words -> !words.isBlank());
    }

    @Override
    public String toString() {
        return "TokenSettings[" + tokenEndpoint.or(() -> tokenFile).orElse("none") + "]";
    }
}
