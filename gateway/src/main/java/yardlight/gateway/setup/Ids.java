package yardlight.gateway.setup;

import java.util.Locale;
import java.util.Optional;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.gateway.document.Fields;

/** Ids and names, which all parts of a setup have alike. */
final class Ids {

    static final int LONGEST_NAME = 100;
    private static final String RULE = "must be 1 to 64 of a-z, 0-9 and -, and not start with -";

    private Ids() {}

    /** The id; where there is none, something that nothing can refer to. */
    static String of(Fields fields) {
        return fields.needs("id").as("id", RULE, Ids::valid).orElseGet(() -> fields.pointer("id"));
    }

    /** The id of something else; empty text where there is none. */
    static String reference(Fields fields, String name) {
        return fields.needs(name).text(name, LONGEST_NAME).orElse("");
    }

    /** The name, or one made of the id. */
    static String name(Fields fields, String id) {
        return fields.text("name", LONGEST_NAME).filter(name -> !name.isEmpty()).orElseGet(() -> spoken(id));
    }

    private static String spoken(String id) {
        return id.toUpperCase(Locale.ROOT).replace('-', ' ');
    }

    private static Optional<String> valid(String text) {
        return Optional.of(text).filter(AlarmKey.ID.asMatchPredicate());
    }
}
