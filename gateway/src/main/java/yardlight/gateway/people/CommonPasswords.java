package yardlight.gateway.people;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Predicate;

/**
 * The 30,000 most common passwords of known thefts, as zxcvbn ships them. Read anew each time: that takes some
 * milliseconds, beside a hash that takes longer, and nobody chooses a password often enough to keep the list in memory.
 */
final class CommonPasswords {

    private static final String LIST = "/com/nulabinc/zxcvbn/matchers/dictionaries/passwords.txt";

    private CommonPasswords() {}

    static boolean any(Predicate<String> fits) {
        try (var lines = new BufferedReader(
                new InputStreamReader(CommonPasswords.class.getResourceAsStream(LIST), StandardCharsets.UTF_8))) {
            return lines.lines().anyMatch(fits);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
