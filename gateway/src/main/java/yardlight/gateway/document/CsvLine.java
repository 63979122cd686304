package yardlight.gateway.document;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Lines of comma-separated values (RFC 4180) that are safe to open in a spreadsheet: a text that begins like a formula
 * gets a quote in front (OWASP, CSV Injection). Numbers are left alone: {@code -12.5} begins with a minus and is none.
 */
public final class CsvLine {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final String FORMULA = "=+-@\t\r\0";

    private CsvLine() {}

    public static String line(List<String> cells) {
        return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    static String cell(String text) {
        String safe = formula(text) ? "'" + text : text;
        boolean plain = safe.chars().noneMatch(sign -> sign == ',' || sign == '"' || sign == '\r' || sign == '\n');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static boolean formula(String text) {
        return !text.isEmpty()
                && FORMULA.indexOf(text.charAt(0)) >= 0
                && !NUMBER.matcher(text).matches();
    }
}
