package yardlight.gateway.wire;

import jakarta.servlet.http.HttpServletRequest;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Where boxes find this gateway: as it is set up, else as whoever asks has found it. */
@Component
public class Address {

    /** Nothing in it means anything to a shell or ends a text in a program. */
    private static final Pattern HOST = Pattern.compile("[A-Za-z0-9.-]+|\\[[0-9A-Fa-f:.]+]|[0-9A-Fa-f:]+");

    private final String publicUrl;

    Address(@Value("${yardlight.public-url:}") String publicUrl) {
        this.publicUrl = publicUrl.strip().replaceFirst("/+$", "");
    }

    /** Whether texts carry links. */
    public boolean isPublic() {
        return !publicUrl.isEmpty();
    }

    /** Without a slash at its end. */
    public String of(HttpServletRequest request) {
        if (isPublic()) {
            return publicUrl;
        }
        String host = HOST.matcher(request.getServerName()).matches() ? request.getServerName() : "localhost";
        int port = request.getServerPort();
        boolean usual = port == (request.isSecure() ? 443 : 80);
        String bracketed = host.contains(":") && !host.startsWith("[") ? "[" + host + "]" : host;
        return request.getScheme() + "://" + bracketed + (usual ? "" : ":" + port);
    }
}
