package yardlight.channels.http;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a template can ask for, written as {@code {to}}. */
enum Placeholder {
    /** The address of the line. */
    TO,
    /** What the person is to read. */
    TEXT,
    /** The message's id: the same whenever it is sent again. */
    ID,
    /** When it was written, as in RFC 3339, in UTC. */
    AT,
    /** The provider's secret, where it wants it in the request and not in a header. */
    SECRET;

    private static final Pattern ANY = Pattern.compile("\\{([A-Za-z_-]+)}");

    @Override
    public String toString() {
        return "{" + name().toLowerCase(Locale.ROOT) + "}";
    }

    /** How many there are in the template, and whether they are known and may stand there. */
    static int count(String property, String template, Set<Placeholder> allowed) {
        int count = 0;
        for (Matcher found = ANY.matcher(template); found.find(); count++) {
            Placeholder placeholder = named(found.group());
            if (placeholder == null || !allowed.contains(placeholder)) {
                throw new IllegalArgumentException(
                        property + " may have only the placeholders " + list(allowed) + " there: " + found.group());
            }
        }
        return count;
    }

    /** Puts the values in, each escaped for where it stands. */
    static String fill(String template, Values values, UnaryOperator<String> escape) {
        return ANY.matcher(template).replaceAll(found -> Matcher.quoteReplacement(escape.apply(value(found, values))));
    }

    private static String value(MatchResult found, Values values) {
        return values.get(named(found.group()));
    }

    private static Placeholder named(String written) {
        return Arrays.stream(values())
                .filter(one -> one.toString().equals(written))
                .findFirst()
                .orElse(null);
    }

    private static String list(Set<Placeholder> allowed) {
        return allowed.isEmpty()
                ? "none"
                : EnumSet.copyOf(allowed).stream().map(Placeholder::toString).collect(Collectors.joining(" "));
    }
}
