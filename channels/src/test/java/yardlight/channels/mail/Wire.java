package yardlight.channels.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** A message as it went over the wire, taken apart by hand: no mail library has a say here. */
record Wire(List<String> fields, String body) {

    /** Unfolds fields (RFC 5322 2.2.3). */
    static Wire of(String text) {
        int blank = text.indexOf("\r\n\r\n");
        List<String> fields = new ArrayList<>();
        for (String line : text.substring(0, blank).split("\r\n")) {
            if (line.startsWith(" ") || line.startsWith("\t")) {
                fields.set(fields.size() - 1, fields.get(fields.size() - 1) + line);
            } else {
                fields.add(line);
            }
        }
        return new Wire(fields, text.substring(blank + 4));
    }

    List<String> named(String name) {
        return fields.stream()
                .filter(field -> field.regionMatches(true, 0, name + ":", 0, name.length() + 1))
                .map(field -> field.substring(name.length() + 1).strip())
                .toList();
    }

    String only(String name) {
        assertThat(named(name)).as(name).hasSize(1);
        return named(name).get(0);
    }

    List<String> names() {
        return fields.stream().map(field -> field.split(":", 2)[0]).toList();
    }
}
