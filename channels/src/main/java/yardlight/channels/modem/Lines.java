package yardlight.channels.modem;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Cuts what a modem says into lines, without their ends and without empty ones. The prompt for a text has no end of line
 * (clause 3.5.1: CR LF, then {@code >} and a space) and is a line all the same: {@link #PROMPT}.
 */
final class Lines {

    static final String PROMPT = "> ";

    /** What is longer is cut: twice the longest that the standard has, a short message in hexadecimal. */
    private static final int LONGEST = 4_000;

    private final SerialLine port;
    private final byte[] read = new byte[1_024];
    private final StringBuilder begun = new StringBuilder();
    private final Deque<String> whole = new ArrayDeque<>();

    Lines(SerialLine port) {
        this.port = port;
    }

    /**
     * The next line; empty if none has come by then.
     *
     * @param end in the time of {@link System#nanoTime()}
     */
    Optional<String> next(long end) throws Gone {
        while (whole.isEmpty()) {
            if (System.nanoTime() - end >= 0) {
                return Optional.empty();
            }
            take();
        }
        return Optional.of(whole.remove());
    }

    /** The next line of those that are there already. */
    Optional<String> next() throws Gone {
        while (whole.isEmpty() && port.isWaiting()) {
            take();
        }
        return Optional.ofNullable(whole.poll());
    }

    /** Forgets what is there and what comes, until nothing has come for a tenth of a second; for no longer than by then. */
    void skip(long end) throws Gone {
        while (port.read(read) > 0 && System.nanoTime() - end < 0) {
            begun.setLength(0);
        }
        begun.setLength(0);
        whole.clear();
    }

    private void take() throws Gone {
        int count = port.read(read);
        for (char character : new String(read, 0, count, StandardCharsets.ISO_8859_1).toCharArray()) {
            take(character);
        }
    }

    private void take(char character) {
        if (character == '\r' || character == '\n') {
            end();
        } else if (begun.length() < LONGEST) {
            begun.append(character);
            if (PROMPT.contentEquals(begun)) {
                end();
            }
        }
    }

    private void end() {
        if (begun.length() > 0) {
            whole.add(begun.toString());
            begun.setLength(0);
        }
    }
}
