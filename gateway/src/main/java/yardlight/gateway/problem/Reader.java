package yardlight.gateway.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpHeaders;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.util.MimeTypeUtils;

/** Who asks: a browser with a person before it, or a program. */
public final class Reader {

    private Reader() {}

    /** Whether the header names HTML outright; a wildcard, as curl sends it, does not. */
    public static boolean wantsPage(String accept) {
        if (accept == null) {
            return false;
        }
        List<MediaType> types = parsed(accept);
        return types.stream().anyMatch(type -> type.equalsTypeAndSubtype(MediaType.TEXT_HTML))
                && types.stream().noneMatch(type -> type.getSubtype().endsWith("json"));
    }

    /** Which of the offered types suits the caller best; the first one when they do not say. */
    public static String choose(HttpServletRequest request, String... offered) {
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        List<MediaType> wanted = accept == null ? new ArrayList<>() : parsed(accept);
        MimeTypeUtils.sortBySpecificity(wanted);
        for (MediaType one : wanted) {
            for (String type : offered) {
                if (one.includes(MediaType.valueOf(type))) {
                    return type;
                }
            }
        }
        return offered[0];
    }

    private static List<MediaType> parsed(String accept) {
        try {
            return new ArrayList<>(MediaType.parseMediaTypes(accept));
        } catch (InvalidMediaTypeException e) {
            return new ArrayList<>();
        }
    }

    /** The path that was asked for, still encoded, also when the container has passed the request on to its error page. */
    static String path(HttpServletRequest request) {
        Object original = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        return original == null ? request.getRequestURI() : original.toString();
    }
}
