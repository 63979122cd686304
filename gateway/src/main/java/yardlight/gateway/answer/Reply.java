package yardlight.gateway.answer;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a text that came back means: {@code OK 47} one call, {@code OK} the only one, {@code ALL} every one.
 *
 * @param code that of the call, if it was said
 */
record Reply(Kind kind, Optional<Integer> code) {

    enum Kind {
        ONE,
        ONLY,
        ALL,
        UNCLEAR
    }

    private static final Pattern ONE = Pattern.compile("OK\\s*#?\\s*(\\d{1,9})");

    static Reply of(String text) {
        String words =
                text.strip().toUpperCase(Locale.ROOT).replaceAll("[.!,]+$", "").strip();
        Matcher one = ONE.matcher(words);
        if (one.matches()) {
            return new Reply(Kind.ONE, Optional.of(Integer.valueOf(one.group(1))));
        }
        return new Reply(
                switch (words) {
                    case "OK" -> Kind.ONLY;
                    case "ALL", "OK ALL" -> Kind.ALL;
                    default -> Kind.UNCLEAR;
                },
                Optional.empty());
    }
}
