package yardlight.gateway.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** A secret that stands in a property, or rather in a file of its own. */
public final class SecretText {

    private SecretText() {}

    /**
     * @param property its name; with {@code -file} behind it that of the file
     * @throws IllegalArgumentException in a sentence about the property, without the secret
     */
    public static Optional<String> of(String property, Optional<String> secret, Optional<String> file) {
        Optional<String> given = secret.filter(text -> !text.isEmpty());
        if (given.isPresent() && file.isPresent()) {
            throw new IllegalArgumentException(
                    property + " must not be set together with " + property + "-file: " + file.get());
        }
        return given.or(() -> file.map(path -> content(property, path)));
    }

    private static String content(String property, String file) {
        try {
            return Files.readString(Path.of(file)).strip();
        } catch (IOException | InvalidPathException e) {
            throw new IllegalArgumentException(property + "-file must be a file that can be read: " + file, e);
        }
    }
}
