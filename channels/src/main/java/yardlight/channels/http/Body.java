package yardlight.channels.http;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** A body with placeholders, of a form in which values can be escaped. */
interface Body {

    Set<Placeholder> ANYWHERE = EnumSet.allOf(Placeholder.class);

    /** As text; it goes out as UTF-8. */
    String fill(Values values);

    /** Reads a template, and refuses one in which a value could not be told from what surrounds it. */
    static Body of(String contentType, String template) {
        String type = contentType.split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
        Placeholder.count("body", template, ANYWHERE);
        if (type.equals("application/json") || type.endsWith("+json")) {
            return JsonBody.of(template);
        }
        if (type.equals("application/xml") || type.equals("text/xml") || type.endsWith("+xml")) {
            return XmlBody.of(template);
        }
        return switch (type) {
            case "application/x-www-form-urlencoded" -> FormBody.of(template);
            case "text/plain" -> plain(template);
            default ->
                throw new IllegalArgumentException("content-type must be JSON, XML, application/x-www-form-urlencoded"
                        + " or text/plain: " + contentType);
        };
    }

    /** Nothing is escaped in plain text, so nothing may stand beside the value. */
    private static Body plain(String template) {
        if (!template.equals(Placeholder.TEXT.toString())) {
            throw new IllegalArgumentException("body of plain text must be {text} and nothing else: " + template);
        }
        return values -> values.get(Placeholder.TEXT);
    }
}
