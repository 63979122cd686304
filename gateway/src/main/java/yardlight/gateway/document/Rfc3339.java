package yardlight.gateway.document;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Times as RFC 3339 writes them: with seconds and an offset. A leap second counts as the second before it. */
public final class Rfc3339 {

    private static final Pattern FORM =
            Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?(Z|[+-]\\d\\d:\\d\\d)");

    private Rfc3339() {}

    /** Empty when it is none. */
    public static Optional<Instant> instant(String written) {
        String text = written.toUpperCase(Locale.ROOT);
        if (!FORM.matcher(text).matches()) {
            return Optional.empty();
        }
        String second = text.substring(17, 19);
        String known = second.equals("60") ? text.substring(0, 17) + "59" + text.substring(19) : text;
        try {
            return Optional.of(OffsetDateTime.parse(known).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
