package yardlight.demo.phone;

import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.springframework.web.util.HtmlUtils;

/**
 * The first form with method POST on a page, as a browser would send it when its button is pressed: the hidden fields,
 * and the button if it has a name. Enough for a page with one large button; not a reader of HTML in general.
 *
 * @param action where the form goes
 */
record AnswerForm(URI action, Map<String, String> fields) {

    private static final Pattern FORM =
            Pattern.compile("<form\\b([^>]*)>(.*?)</form>", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final Pattern CONTROL = Pattern.compile("<(input|button)\\b([^>]*)>", Pattern.CASE_INSENSITIVE);

    /** Finds the form; empty when the page has none, because the link was used or is too old. */
    static Optional<AnswerForm> on(URI page, String html) {
        Matcher form = FORM.matcher(html);
        while (form.find()) {
            String attributes = form.group(1);
            if (attribute(attributes, "method").filter("post"::equalsIgnoreCase).isPresent()) {
                URI action = attribute(attributes, "action").map(page::resolve).orElse(page);
                return Optional.of(new AnswerForm(action, fields(form.group(2))));
            }
        }
        return Optional.empty();
    }

    private static Map<String, String> fields(String inner) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher control = CONTROL.matcher(inner);
        boolean pressed = false;
        while (control.find()) {
            String attributes = control.group(2);
            boolean button = presses(control.group(1), attributes);
            if ((button && !pressed) || hidden(attributes)) {
                attribute(attributes, "name")
                        .ifPresent(name ->
                                fields.put(name, attribute(attributes, "value").orElse("")));
            }
            pressed |= button;
        }
        return fields;
    }

    private static boolean presses(String tag, String attributes) {
        String type = attribute(attributes, "type").orElse(tag.equalsIgnoreCase("button") ? "submit" : "text");
        return type.equalsIgnoreCase("submit");
    }

    private static boolean hidden(String attributes) {
        return attribute(attributes, "type").filter("hidden"::equalsIgnoreCase).isPresent();
    }

    private static Optional<String> attribute(String attributes, String name) {
        Matcher found = Pattern.compile(
                        "(?:^|\\s)" + name + "\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)'|([^\\s\"'>]+))",
                        Pattern.CASE_INSENSITIVE)
                .matcher(attributes);
        if (!found.find()) {
            return Optional.empty();
        }
        String value =
                found.group(1) != null ? found.group(1) : found.group(2) != null ? found.group(2) : found.group(3);
        return Optional.of(HtmlUtils.htmlUnescape(value));
    }

    /** The body of the request, {@code application/x-www-form-urlencoded}. */
    String encoded() {
        return fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
