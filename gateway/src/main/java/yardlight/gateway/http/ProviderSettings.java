package yardlight.gateway.http;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.boot.context.properties.bind.Name;
import yardlight.channels.http.Authentication;
import yardlight.channels.http.HttpSettings;
import yardlight.channels.http.HttpSettings.Form;
import yardlight.channels.http.HttpSettings.Reading;
import yardlight.channels.http.Secret;
import yardlight.channels.http.Sign;
import yardlight.channels.http.Whereabouts;
import yardlight.channels.web.Limits;

/** One provider, by the names that docs/channels.md gives the properties. */
record ProviderSettings(
        @DefaultValue("") String url,
        @DefaultValue("POST") String method,
        @DefaultValue Map<String, String> headers,
        @DefaultValue("application/json") String contentType,
        @DefaultValue("") String body,
        Optional<String> idempotencyHeader,
        @DefaultValue("none") String authentication,
        @DefaultValue("") String user,
        @DefaultValue("") String secretHeader,
        Optional<String> secret,
        Optional<String> secretFile,
        @DefaultValue Set<Integer> success,
        @Name("transient") @DefaultValue Set<Integer> passing,
        Optional<String> takenPointer,
        @DefaultValue Set<String> takenValues,
        @DefaultValue Set<String> refusedValues,
        Optional<String> takenPattern,
        Optional<String> refusedPattern,
        Optional<String> referencePointer,
        Optional<String> referenceHeader,
        Optional<String> address,
        Optional<String> knockUrl,
        @DefaultValue("5s") Duration connectTimeout,
        @DefaultValue("30s") Duration timeout) {

    /**
     * Empty without an address.
     *
     * @throws IllegalArgumentException in a sentence that begins with the name of the property
     */
    Optional<HttpSettings> read() {
        if (url.isBlank()) {
            return Optional.empty();
        }
        Optional<Secret> known = key();
        return Optional.of(new HttpSettings(
                new Form(method, url, headers, contentType, body.strip(), idempotencyHeader),
                proof(known),
                known,
                new Reading(success, passing, taken(), reference()),
                address.map(words -> pattern("address", words)).orElse(HttpSettings.PHONE),
                knockUrl,
                new Limits(connectTimeout, timeout)));
    }

    private Optional<Secret> key() {
        if (secret.isPresent() && secretFile.isPresent()) {
            throw new IllegalArgumentException("secret must not be set together with secret-file: " + secretFile.get());
        }
        return secret.or(() -> secretFile.map(ProviderSettings::content)).map(Secret::new);
    }

    private static String content(String file) {
        try {
            return Files.readString(Path.of(file)).strip();
        } catch (IOException | InvalidPathException e) {
            throw new IllegalArgumentException("secret-file must be a file that can be read: " + file, e);
        }
    }

    private Optional<Authentication> proof(Optional<Secret> known) {
        if (authentication.equals("none")) {
            return Optional.empty();
        }
        Secret shown = known.orElseThrow(() -> new IllegalArgumentException(
                "secret must be set, or secret-file, for authentication: " + authentication));
        return Optional.of(
                switch (authentication) {
                    case "header" -> new Authentication.Header(secretHeader, shown);
                    case "basic" -> new Authentication.Basic(user, shown);
                    case "bearer" -> new Authentication.Bearer(shown);
                    default ->
                        throw new IllegalArgumentException(
                                "authentication must be none, header, basic or bearer: " + authentication);
                });
    }

    private Optional<Sign> taken() {
        if (takenPointer.isPresent() && takenPattern.isPresent()) {
            throw new IllegalArgumentException(
                    "taken-pattern must not be set together with taken-pointer: " + takenPattern.get());
        }
        if (takenPointer.isEmpty() && !(takenValues.isEmpty() && refusedValues.isEmpty())) {
            throw new IllegalArgumentException(
                    "taken-values and refused-values must have a taken-pointer: " + takenValues + " " + refusedValues);
        }
        if (takenPattern.isEmpty() && refusedPattern.isPresent()) {
            throw new IllegalArgumentException(
                    "refused-pattern must have a taken-pattern beside it: " + refusedPattern.get());
        }
        Optional<Sign> value = takenPointer.map(at -> new Sign.Value(at, takenValues, refusedValues));
        return value.or(() -> takenPattern.map(words -> new Sign.Words(
                pattern("taken-pattern", words), refusedPattern.map(never -> pattern("refused-pattern", never)))));
    }

    private Optional<Whereabouts> reference() {
        if (referencePointer.isPresent() && referenceHeader.isPresent()) {
            throw new IllegalArgumentException(
                    "reference-header must not be set together with reference-pointer: " + referenceHeader.get());
        }
        Optional<Whereabouts> pointer = referencePointer.map(Whereabouts.AtPointer::new);
        return pointer.or(() -> referenceHeader.map(Whereabouts.InHeader::new));
    }

    private static Pattern pattern(String property, String words) {
        try {
            return Pattern.compile(words);
        } catch (PatternSyntaxException e) {
            throw new IllegalArgumentException(property + " must be a regular expression: " + words, e);
        }
    }

    /** Keeps the secret back. */
    @Override
    public String toString() {
        return "ProviderSettings[" + url + "]";
    }
}
