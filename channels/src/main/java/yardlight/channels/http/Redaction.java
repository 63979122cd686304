package yardlight.channels.http;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Keeps the secret out of what a provider says: some repeat it in their complaint. */
record Redaction(List<String> hidden) {

    private static final String INSTEAD = "[secret]";

    static Redaction of(Optional<Authentication> authentication, Optional<Secret> secret) {
        Stream<String> plain = Stream.concat(
                secret.stream().map(Secret::value), authentication.stream().map(Redaction::bare));
        return new Redaction(plain.flatMap(one -> Stream.of(one, Escapes.percent(one), Escapes.xml(one)))
                .distinct()
                // The longest first: one may be a part of another.
                .sorted(Comparator.comparing(String::length).reversed())
                .toList());
    }

    /** Without the word before it, such as {@code Bearer}. */
    private static String bare(Authentication authentication) {
        String value = authentication.value();
        return value.substring(value.indexOf(' ') + 1);
    }

    String of(String words) {
        String shown = words;
        for (String one : hidden) {
            shown = shown.replace(one, INSTEAD);
        }
        return shown;
    }
}
