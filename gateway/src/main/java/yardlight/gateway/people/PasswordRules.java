package yardlight.gateway.people;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import yardlight.gateway.setup.SetupInForce;

/**
 * Which passwords are taken, by NIST SP 800-63B-4 (2025), 3.1.1.2: at least 15 characters, because here a password is all
 * that is asked for; long ones; any characters, each code point counted as one; no rules of what they are made of; none
 * that is on a list of common ones, or the name of something at hand. Of those the whole is compared, once or repeated, and
 * not what it contains.
 */
@Component
public class PasswordRules {

    public static final int SHORTEST = 15;
    public static final int LONGEST = 128;

    private static final String PRODUCT = "yardlight";

    private final SetupInForce inForce;

    PasswordRules(SetupInForce inForce) {
        this.inForce = inForce;
    }

    /** What is wrong with it for somebody with this login; empty when nothing is. */
    public Optional<PasswordFault> fault(String password, String login) {
        if (password.length() > LONGEST * 2) {
            return Optional.of(PasswordFault.LONG);
        }
        String normal = normal(password);
        int length = normal.codePointCount(0, normal.length());
        if (length < SHORTEST) {
            return Optional.of(PasswordFault.SHORT);
        }
        if (length > LONGEST) {
            return Optional.of(PasswordFault.LONG);
        }
        String folded = folded(normal);
        if (names(login).map(PasswordRules::folded).anyMatch(name -> isMadeOf(folded, name))) {
            return Optional.of(PasswordFault.NAME);
        }
        boolean common = folded.codePoints().distinct().count() <= 1
                || CommonPasswords.any(entry -> isMadeOf(folded, folded(entry)));
        return common ? Optional.of(PasswordFault.COMMON) : Optional.empty();
    }

    /** The form in which a password is kept and checked: NFKC, as 3.1.1.2 has it, so that every keyboard types the same. */
    static String normal(CharSequence password) {
        return Normalizer.normalize(password, Normalizer.Form.NFKC);
    }

    /** Whether this is too long to be a password, before any time is spent on it. */
    static boolean tooLong(CharSequence password) {
        if (password.length() > LONGEST * 2) {
            return true;
        }
        String normal = normal(password);
        return normal.codePointCount(0, normal.length()) > LONGEST;
    }

    private Stream<String> names(String login) {
        Stream<String> sites =
                inForce.setup().sites().values().stream().flatMap(site -> Stream.of(site.id(), site.name()));
        return Stream.concat(Stream.of(login, PRODUCT), sites);
    }

    /** Without case and without what stands between words. */
    private static String folded(String text) {
        return normal(text).toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{Pd}_.]+", "");
    }

    /** Whether the text is the piece, once or over and over; the last time may be cut short. */
    static boolean isMadeOf(String text, String piece) {
        if (piece.isEmpty() || text.length() < piece.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != piece.charAt(i % piece.length())) {
                return false;
            }
        }
        return true;
    }
}
