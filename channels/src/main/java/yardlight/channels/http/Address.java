package yardlight.channels.http;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.EnumSet;
import java.util.Set;

/** The URL of the provider, with placeholders in its path and its query: never in the host. */
final class Address {

    /** A text could make other steps of a path: two dots are two dots, however they are written (RFC 3986 5.2.4). */
    private static final Set<Placeholder> IN_PATH = EnumSet.of(Placeholder.TO, Placeholder.ID);

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");

    private final String template;
    private final URI bare;

    private Address(String template, URI bare) {
        this.template = template;
        this.bare = bare;
    }

    /** @param property in which it stands */
    static Address of(String property, String template) {
        int query = template.indexOf('?') < 0 ? template.length() : template.indexOf('?');
        int path = template.indexOf('/', template.indexOf("://") + 3);
        int server = path < 0 ? query : Math.min(path, query);
        Placeholder.count(property + ", in the server,", template.substring(0, server), Set.of());
        Placeholder.count(property + ", in the path,", template.substring(server, query), IN_PATH);
        Placeholder.count(property, template.substring(query), Body.ANYWHERE);
        return new Address(template, check(property, template, template.substring(0, query)));
    }

    private static URI check(String property, String template, String untilQuery) {
        try {
            URI whole = new URI(template.replaceAll("\\{[a-z]+}", "x"));
            boolean https = "https".equals(whole.getScheme());
            boolean here = "http".equals(whole.getScheme()) && THIS_MACHINE.contains(whole.getHost());
            if (whole.getHost() != null
                    && (https || here)
                    && whole.getUserInfo() == null
                    && whole.getFragment() == null) {
                int first = untilQuery.indexOf('{');
                return new URI(first < 0 ? untilQuery : untilQuery.substring(0, first));
            }
        } catch (URISyntaxException e) {
            // Said below.
        }
        throw new IllegalArgumentException(property + " must be a whole https address without a login and without #,"
                + " or http to this machine: " + template);
    }

    URI fill(Values values) {
        return URI.create(Placeholder.fill(template, values, Escapes::percent));
    }

    /** Up to the first placeholder, without a query. */
    URI bare() {
        return bare;
    }

    /** For people: no path, in which there may be a name of ours. */
    String server() {
        return bare.getAuthority();
    }
}
