package yardlight.gateway.ladders;

import java.time.DateTimeException;
import java.time.Duration;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long a rung waits, as people write it: {@code 5} is minutes, {@code 1:30} minutes and seconds. */
final class Wait {

    private static final Pattern TYPED = Pattern.compile("(\\d{1,5})(?::([0-5]\\d))?");

    private Wait() {}

    /** A duration of the setup as it stands in a form; what is none, or has parts of a second, as it is. */
    static String shown(String iso) {
        try {
            Duration wait = Duration.parse(iso);
            if (wait.isNegative() || wait.getNano() != 0 || wait.toMinutes() > 99_999) {
                return iso;
            }
            int seconds = wait.toSecondsPart();
            return wait.toMinutes() + (seconds == 0 ? "" : String.format(Locale.ROOT, ":%02d", seconds));
        } catch (DateTimeException notOne) {
            return iso;
        }
    }

    /** What was typed as a duration of the setup; what cannot be understood as it is, for the setup's reader to refuse. */
    static String read(String typed) {
        Matcher parts = TYPED.matcher(typed.strip());
        if (!parts.matches()) {
            return typed.strip();
        }
        Duration minutes = Duration.ofMinutes(Long.parseLong(parts.group(1)));
        return minutes.plusSeconds(parts.group(2) == null ? 0 : Long.parseLong(parts.group(2)))
                .toString();
    }
}
