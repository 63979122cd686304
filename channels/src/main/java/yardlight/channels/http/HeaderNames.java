package yardlight.channels.http;

import java.net.URI;
import java.net.http.HttpRequest;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Which headers a template may set. */
final class HeaderNames {

    /** RFC 9110 5.6.2. */
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z0-9!#$%&'*+.^_`|~-]{1,100}");

    /** What says how the message is built and how long it is: RFC 9112 6. */
    private static final Set<String> FRAMING = Set.of("transfer-encoding", "content-encoding", "te", "trailer");

    private HeaderNames() {}

    /** @param property in which the name stands */
    static void check(String property, String name) {
        if (!TOKEN.matcher(name).matches() || FRAMING.contains(name.toLowerCase(Locale.ROOT)) || !isFree(name)) {
            throw new IllegalArgumentException(
                    property + " must be the name of a header that is not about the connection: " + name);
        }
    }

    /** The JDK's client sets some by itself, and refuses them. */
    private static boolean isFree(String name) {
        try {
            HttpRequest.newBuilder(URI.create("https://any.example/")).header(name, "any");
            return true;
        } catch (IllegalArgumentException restricted) {
            return false;
        }
    }
}
