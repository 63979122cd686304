package yardlight.channels.http;

import java.util.Set;

/** Fields as a form sends them: {@code to={to}&message={text}}. Placeholders only in values. */
record FormBody(String template) implements Body {

    static Body of(String template) {
        for (String field : template.split("&", -1)) {
            int equals = field.indexOf('=');
            if (equals < 1 || field.chars().anyMatch(c -> c <= ' ' || c > '~')) {
                throw new IllegalArgumentException(
                        "body of a form must be name=value with & between, in ASCII and without blanks: " + field);
            }
            Placeholder.count("body, in the name of a field,", field.substring(0, equals), Set.of());
        }
        return new FormBody(template);
    }

    @Override
    public String fill(Values values) {
        return Placeholder.fill(template, values, Escapes::percent);
    }
}
