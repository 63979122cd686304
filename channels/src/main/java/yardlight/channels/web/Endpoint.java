package yardlight.channels.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Where a subscription says that its messages go, or where somebody says that a calendar is. Somebody else wrote it, so it could name a machine that only we can
 * reach: it is held to be a public name on the usual port, over TLS, and nothing more.
 */
public final class Endpoint {

    public static final int LONGEST = 1_000;

    private static final int HTTPS = 443;

    private static final String LABEL = "[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?";
    /** With a dot in it, and a last label that is not a number: so no address of four numbers. */
    private static final Pattern NAME = Pattern.compile("(?:" + LABEL + "\\.)+(?![0-9]+$)" + LABEL);

    /** RFC 6761, RFC 6762, RFC 8375, and what ICANN set aside for private use in 2024. */
    private static final Set<String> PRIVATE = Set.of("localhost", "local", "internal", "home.arpa", "localdomain");

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1");

    private Endpoint() {}

    /** Empty for one that may be asked, as far as can be said without looking its name up. */
    public static Optional<URI> of(String text, boolean loopback) {
        if (text.length() > LONGEST || text.chars().anyMatch(c -> c <= ' ' || c > '~')) {
            return Optional.empty();
        }
        try {
            URI uri = new URI(text);
            boolean plain = uri.getHost() != null && uri.getUserInfo() == null && uri.getFragment() == null;
            return plain && (isPublic(uri) || loopback && isHere(uri)) ? Optional.of(uri) : Optional.empty();
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    public static boolean isHere(URI uri) {
        return THIS_MACHINE.contains(uri.getHost()) && uri.getScheme().matches("https?");
    }

    private static boolean isPublic(URI uri) {
        String host = uri.getHost().toLowerCase(Locale.ROOT);
        return "https".equals(uri.getScheme())
                && (uri.getPort() == -1 || uri.getPort() == HTTPS)
                && NAME.matcher(host).matches()
                && PRIVATE.stream().noneMatch(suffix -> host.endsWith("." + suffix));
    }
}
