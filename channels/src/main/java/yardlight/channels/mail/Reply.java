package yardlight.channels.mail;

import java.util.stream.Collectors;

/**
 * A server's answer, of one line or several (RFC 5321 4.2.1).
 *
 * @param code 100 to 999 in practice; the first digit decides
 * @param lines as they came, each with its code
 */
record Reply(int code, String lines) {

    /** {@code 250 one two} for {@code 250-one}, {@code 250 two}. */
    String words() {
        return code + " " + lines.lines().map(Reply::withoutCode).collect(Collectors.joining(" "));
    }

    boolean isPositive() {
        return code >= 200 && code < 400;
    }

    private static String withoutCode(String line) {
        return line.length() > 4 ? line.substring(4) : "";
    }
}
