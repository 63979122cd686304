package yardlight.gateway.document;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import yardlight.gateway.problem.Problem;

/** The body of a request, never more of it than is allowed. */
public final class Body {

    /** Bytes; enough for everything but a backlog. */
    public static final int USUAL = 1024 * 1024;

    /** Bytes of a backlog. */
    public static final int LARGEST_POST = 2 * USUAL;

    /** Bytes that no body may exceed, whatever the heap. */
    static final int MOST = 32 * USUAL;

    /** Read and checked, a setup takes some thirty times its size for a moment; half of the heap is left to the others. */
    private static final int HEAP_FOR_A_BYTE = 64;

    private Body() {}

    /** Bytes of a setup: 2 MB of a heap of 128 MB, 16 MB of 1 GB. That is about 13 boxes for each KB. */
    public static int roomy() {
        long fitting = Runtime.getRuntime().maxMemory() / HEAP_FOR_A_BYTE;
        return (int) Math.max(USUAL, Math.min(MOST, fitting));
    }

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

    /** A small JSON document, as the actions take them; an empty body counts as an empty object. */
    public static Document json(HttpServletRequest request) throws IOException {
        String text = text(request, USUAL);
        if (text.isBlank()) {
            return Document.json("{}");
        }
        if (!Format.of(request, text).equals(Optional.of(Format.JSON))) {
            throw Problem.wrongType(Format.JSON.type());
        }
        return Document.json(text);
    }
}
