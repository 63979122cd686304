package yardlight.gateway.document;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import yardlight.gateway.problem.Problem;

/** The forms in which a body may come. */
public enum Format {
    JSON("application/json"),
    /** JSON, one document a line. */
    LINES("application/x-ndjson"),
    FORM("application/x-www-form-urlencoded"),
    /** A line of names and then lines of values (RFC 4180). */
    CSV("text/csv"),
    YAML("application/yaml", "application/x-yaml", "text/yaml", "text/x-yaml");

    private final List<String> types;

    Format(String... types) {
        this.types = List.of(types);
    }

    /** The type as it is written in headers. */
    public String type() {
        return types.get(0);
    }

    /**
     * The form of a body; empty when it claims to be nothing that is read here. JSON that comes labelled as a form is
     * taken for JSON, because that is how {@code curl -d '{…}'} sends it, and no form begins with a brace.
     *
     * @throws Problem 415 when it says that it is not UTF-8
     */
    public static Optional<Format> of(HttpServletRequest request, String body) {
        Optional<Format> claimed = named(request.getContentType());
        return claimed.equals(Optional.of(FORM)) && looksLikeJson(body) ? Optional.of(JSON) : claimed;
    }

    public boolean claimedBy(HttpServletRequest request) {
        return named(request.getContentType()).equals(Optional.of(this));
    }

    private static Optional<Format> named(String header) {
        if (header == null) {
            return Optional.empty();
        }
        try {
            MediaType type = MediaType.parseMediaType(header);
            if (type.getCharset() != null && !type.getCharset().equals(StandardCharsets.UTF_8)) {
                throw Problem.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "the body must be UTF-8");
            }
            String bare = type.getType() + "/" + type.getSubtype();
            return List.of(values()).stream()
                    .filter(format -> format.types.contains(bare.toLowerCase(java.util.Locale.ROOT)))
                    .findFirst();
        } catch (InvalidMediaTypeException e) {
            return Optional.empty();
        }
    }

    private static boolean looksLikeJson(String body) {
        String start = body.stripLeading();
        return start.startsWith("{") || start.startsWith("[");
    }
}
