package yardlight.gateway.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;

/** Who asks: a browser with a person before it, or a program. */
public final class Reader {

    private Reader() {}

    /** Whether the header names HTML outright; a wildcard, as curl sends it, does not. */
    public static boolean wantsPage(String accept) {
        if (accept == null) {
            return false;
        }
        try {
            List<MediaType> types = MediaType.parseMediaTypes(accept);
            return types.stream().anyMatch(type -> type.equalsTypeAndSubtype(MediaType.TEXT_HTML))
                    && types.stream().noneMatch(type -> type.getSubtype().endsWith("json"));
        } catch (InvalidMediaTypeException e) {
            return false;
        }
    }

    /** The path that was asked for, still encoded, also when the container has passed the request on to its error page. */
    static String path(HttpServletRequest request) {
        Object original = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        return original == null ? request.getRequestURI() : original.toString();
    }
}
