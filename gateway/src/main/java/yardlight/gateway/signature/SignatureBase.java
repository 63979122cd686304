package yardlight.gateway.signature;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is signed (RFC 9421 2.5): one line for each covered component, and one for the parameters. */
final class SignatureBase {

    private static final int HTTP = 80;
    private static final int HTTPS = 443;

    private final HttpServletRequest request;

    SignatureBase(HttpServletRequest request) {
        this.request = request;
    }

    /** @throws BadSignature when something is covered that is not there, or that is not known here */
    String of(SignatureInput input) throws BadSignature {
        var base = new StringBuilder();
        for (String component : input.components()) {
            base.append('"')
                    .append(component)
                    .append("\": ")
                    .append(value(component))
                    .append('\n');
        }
        return base.append("\"@signature-params\": ").append(input.parameters()).toString();
    }

    private String value(String component) throws BadSignature {
        return switch (component) {
            case "@method" -> request.getMethod();
            case "@path" -> request.getRequestURI().isEmpty() ? "/" : request.getRequestURI();
            case "@query" -> "?" + (request.getQueryString() == null ? "" : request.getQueryString());
            case "@authority" -> authority();
            default -> header(component);
        };
    }

    /** RFC 9421 2.2.3: in small letters, and without the port that is meant anyway. */
    private String authority() {
        String host = String.valueOf(request.getHeader("Host")).toLowerCase(Locale.ROOT);
        int usual = request.isSecure() ? HTTPS : HTTP;
        return host.endsWith(":" + usual) ? host.substring(0, host.lastIndexOf(':')) : host;
    }

    /** RFC 9421 2.1: without the spaces around, several joined to one. */
    private String header(String name) throws BadSignature {
        List<String> values = name.startsWith("@") ? List.of() : Collections.list(request.getHeaders(name));
        if (values.isEmpty()) {
            throw new BadSignature("the signature covers " + name + ", which is not there or not known here");
        }
        return values.stream().map(String::strip).collect(Collectors.joining(", "));
    }
}
