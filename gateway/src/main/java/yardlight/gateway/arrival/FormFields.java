package yardlight.gateway.arrival;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The fields of a page's form, as the container reads them when it has the body. */
final class FormFields {

    /** No page has as many; each costs more than its letters. */
    private static final int MOST = 5_000;

    private static final String FORM = "application/x-www-form-urlencoded";

    private FormFields() {}

    /**
     * What the query says, and behind it what a posted form does (Servlet 6.1, 3.1), which may be as long as any body. A field that
     * cannot be read is left out.
     *
     * @param type of the content; null when nothing is said of it
     */
    static Map<String, String[]> in(byte[] body, String method, String type, Map<String, String[]> query) {
        if (!method.equals("POST") || type == null || !isForm(type) || separators(body) > MOST) {
            return query;
        }
        var all = new LinkedHashMap<>(query);
        for (String pair : new String(body, StandardCharsets.UTF_8).split("&")) {
            add(pair, all);
        }
        return all;
    }

    private static int separators(byte[] body) {
        int found = 0;
        for (byte one : body) {
            found += one == '&' ? 1 : 0;
        }
        return found;
    }

    private static boolean isForm(String type) {
        return type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT).equals(FORM);
    }

    private static void add(String pair, Map<String, String[]> to) {
        String[] parts = pair.split("=", 2);
        try {
            String name = decoded(parts[0]);
            String value = parts.length > 1 ? decoded(parts[1]) : "";
            if (!name.isEmpty()) {
                to.merge(name, new String[] {value}, FormFields::joined);
            }
        } catch (IllegalArgumentException e) {
            // A broken escape: the container leaves such a field out, too.
        }
    }

    private static String[] joined(String[] before, String[] more) {
        String[] both = Arrays.copyOf(before, before.length + more.length);
        System.arraycopy(more, 0, both, before.length, more.length);
        return both;
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
