package yardlight.db.columns;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yardlight.escalation.alarm.AlarmKey;

/**
 * Short lists within one column, as text that a person can read: items divided by a semicolon, the parts of an item by a
 * space. Ids contain neither.
 */
final class Compact {

    private Compact() {}

    static <T> String join(Collection<T> items, Function<T, String> text) {
        return items.stream().map(text).collect(Collectors.joining(";"));
    }

    static <T> List<T> split(String column, Function<String, T> item) {
        return column.isEmpty()
                ? List.of()
                : Stream.of(column.split(";")).map(item).toList();
    }

    static String instants(Collection<Instant> instants) {
        return join(instants, Instant::toString);
    }

    static List<Instant> instants(String column) {
        return split(column, Instant::parse);
    }

    static String key(AlarmKey key) {
        return key.site() + "/" + key.local();
    }

    static AlarmKey key(String text) {
        String[] parts = text.split("/");
        return new AlarmKey(parts[0], parts[1], parts[2]);
    }
}
