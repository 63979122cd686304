package yardlight.gateway.document;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import yardlight.gateway.problem.Problem;

/** The body of a request, never more of it than is allowed. */
public final class Body {

    public static final int USUAL = 1024 * 1024;

    private Body() {}

    /**
     * @param most bytes
     * @throws Problem 413 when there is more, 415 when it is compressed, 400 when it is not UTF-8
     */
    public static String text(HttpServletRequest request, int most) throws IOException {
        String encoding = request.getHeader(HttpHeaders.CONTENT_ENCODING);
        if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
            throw Problem.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "the body must not be compressed");
        }
        if (request.getContentLengthLong() > most) {
            throw tooLarge(most);
        }
        byte[] bytes = request.getInputStream().readNBytes(most + 1);
        if (bytes.length > most) {
            throw tooLarge(most);
        }
        return Utf8.text(bytes);
    }

    private static Problem tooLarge(int most) {
        return Problem.tooLarge("the body must be at most " + most / 1024 + " KB");
    }

    /** The type that the body claims to be, without parameters; empty when it claims none. */
    public static Optional<MediaType> type(HttpServletRequest request) {
        if (request.getContentType() == null) {
            return Optional.empty();
        }
        try {
            MediaType type = MediaType.parseMediaType(request.getContentType());
            if (type.getCharset() != null && !type.getCharset().equals(StandardCharsets.UTF_8)) {
                throw Problem.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "the body must be UTF-8");
            }
            return Optional.of(new MediaType(type.getType(), type.getSubtype()));
        } catch (InvalidMediaTypeException e) {
            return Optional.empty();
        }
    }

    /** A small JSON document, as the actions take them; an empty body counts as an empty object. */
    public static Document json(HttpServletRequest request) throws IOException {
        String text = text(request, USUAL);
        if (text.isBlank()) {
            return Document.json("{}");
        }
        if (!type(request).equals(Optional.of(MediaType.APPLICATION_JSON))) {
            throw Problem.wrongType(MediaType.APPLICATION_JSON_VALUE);
        }
        return Document.json(text);
    }
}
