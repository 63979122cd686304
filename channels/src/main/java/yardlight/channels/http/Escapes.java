package yardlight.channels.http;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** How a value is written where it stands, so that it stays a value. */
final class Escapes {

    private Escapes() {}

    /** RFC 3986 2: all but the unreserved characters as the bytes of their UTF-8. Good for a form field as well. */
    static String percent(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("*", "%2A")
                .replace("%7E", "~");
    }

    /** XML 1.0 2.4 and 3.3.3: as good in an element as in an attribute, where a bare line break would become a blank. */
    static String xml(String value) {
        return value.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&apos;")
                .replace("\n", "&#10;")
                .replace("\t", "&#9;");
    }
}
