package yardlight.channels.modem;

import java.util.List;
import java.util.Optional;

/**
 * What a modem answered to one command.
 *
 * @param lines those that belong to the answer, before its result
 * @param result {@code OK}, {@code ERROR}, {@code +CMS ERROR: 38} or {@code +CME ERROR: 11}
 */
record Answer(List<String> lines, String result) {

    private static final String OK = "OK";
    private static final String ERROR = "ERROR";

    Answer {
        lines = List.copyOf(lines);
    }

    /** Whether such a line ends an answer (TS 27.007 clause 4, TS 27.005 clause 3.2.5). */
    static boolean isResult(String line) {
        return line.equals(OK)
                || line.equals(ERROR)
                || line.startsWith(Trouble.OF_TEXTS)
                || line.startsWith(Trouble.OF_THE_MODEM);
    }

    boolean isOk() {
        return result.equals(OK);
    }

    /** The values of the first line, after its name and the colon, as they stand between commas; empty if there is none. */
    Optional<String[]> values() {
        return lines.stream()
                .findFirst()
                .map(line -> line.substring(line.indexOf(':') + 1).strip().split("\\s*,\\s*"));
    }
}
