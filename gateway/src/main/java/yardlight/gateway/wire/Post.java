package yardlight.gateway.wire;

import java.time.Instant;
import java.util.regex.Pattern;

/**
 * A post of a box as it came in.
 *
 * @param door which one it came to, {@code events} or {@code heartbeats}
 * @param said what was in it, in short; empty when it could not be read
 * @param answer what the box was told
 */
public record Post(Instant at, String door, int status, String said, String answer) {

    private static final int LONGEST = 300;

    /** As long as a key, or as one that was shortened to be shown. No id has capitals. */
    private static final Pattern KEY = Pattern.compile("(?=[a-z0-9-]*[A-Z_])[A-Za-z0-9_-]{24,}");

    public Post {
        said = shown(said);
        answer = shown(answer);
    }

    /** Whether it was taken. */
    public boolean good() {
        return status < 300;
    }

    private static String shown(String words) {
        String masked = KEY.matcher(words).replaceAll("***");
        return masked.length() > LONGEST ? masked.substring(0, LONGEST) + "..." : masked;
    }
}
