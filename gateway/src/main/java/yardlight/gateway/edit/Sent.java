package yardlight.gateway.edit;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a browser sent of a form, by the names of its fields. */
public final class Sent {

    private Sent() {}

    /** Empty text where there is none. */
    public static String text(Map<String, String[]> sent, String name) {
        String[] values = sent.getOrDefault(name, new String[0]);
        return values.length == 0 ? "" : values[0];
    }

    /** What was ticked of a list. */
    public static Set<String> texts(Map<String, String[]> sent, String name) {
        return Set.copyOf(new HashSet<>(List.of(sent.getOrDefault(name, new String[0]))));
    }

    /** A number that we put into the form ourselves; 0 when somebody has changed it into something else. */
    public static int number(Map<String, String[]> sent, String name) {
        String written = text(sent, name);
        return written.matches("\\d{1,9}") ? Integer.parseInt(written) : 0;
    }

    /** Takes a row out, if there is one at this place. */
    public static void drop(List<?> rows, int place) {
        if (place >= 0 && place < rows.size()) {
            rows.remove(place);
        }
    }

    /** Moves a row before the one above it, if there is one. */
    public static void up(List<?> rows, int place) {
        if (place > 0 && place < rows.size()) {
            Collections.swap(rows, place - 1, place);
        }
    }
}
