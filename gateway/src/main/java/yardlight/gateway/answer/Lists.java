package yardlight.gateway.answer;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Things one after the other. */
final class Lists {

    private Lists() {}

    static String plain(Collection<?> things) {
        return things.stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    static List<String> both(List<String> some, List<String> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }
}
