package yardlight.gateway.fields;

import java.util.HashMap;
import java.util.Map;

/** What stands in the fields of a form, by their ids: as the setup has it, or as somebody typed it. */
public record Values(Map<String, String> byId) {

    private static final String UNIT = "Unit";

    public Values {
        byId = Map.copyOf(byId);
    }

    /** What a browser sent; line ends as we write them. */
    public static Values typed(Map<String, String[]> sent) {
        var values = new HashMap<String, String>();
        sent.forEach((id, texts) -> {
            if (texts.length > 0) {
                values.put(id, texts[0].replace("\r\n", "\n"));
            }
        });
        return new Values(values);
    }

    /** Empty text where there is none. */
    public String at(String id) {
        return byId.getOrDefault(id, "");
    }

    public Span span(String id) {
        return new Span(at(id), byId.getOrDefault(id + UNIT, Span.MINUTES));
    }

    static Map<String, String> of(String id, Span span) {
        return Map.of(id, span.count(), id + UNIT, span.unit());
    }

    boolean blank(Field field) {
        return at(field.id()).isBlank();
    }

    /** Whether the field says the same in both. */
    boolean same(Field field, Values others) {
        boolean alike = at(field.id()).strip().equals(others.at(field.id()).strip());
        boolean unit = field.kind() != Kind.SPAN
                || blank(field)
                || span(field.id()).unit().equals(others.span(field.id()).unit());
        return alike && unit;
    }
}
