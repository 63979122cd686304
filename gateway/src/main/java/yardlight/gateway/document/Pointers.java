package yardlight.gateway.document;

import java.nio.charset.StandardCharsets;
import org.springframework.web.util.UriUtils;

/** JSON pointers in the form of a URI fragment (RFC 6901, section 6). */
final class Pointers {

    private Pointers() {}

    static String member(String pointer, String name) {
        String escaped = name.replace("~", "~0").replace("/", "~1");
        return pointer + "/" + UriUtils.encodeFragment(escaped, StandardCharsets.UTF_8);
    }
}
