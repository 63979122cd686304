package yardlight.db.columns;

import java.time.Instant;
import java.util.Optional;
import java.util.StringJoiner;
import yardlight.escalation.heartbeat.Arrivals;

/**
 * What was learned of a box's arrivals, as text in one column: a time or a dash, then numbers, with spaces between; empty
 * while nothing is known. Nobody looks for a row by it, and a column for each number would be written at each heartbeat too.
 */
final class ArrivalsColumn {

    private ArrivalsColumn() {}

    static String text(Arrivals arrivals) {
        if (arrivals.equals(Arrivals.NONE)) {
            return "";
        }
        var text = new StringJoiner(" ")
                .add(arrivals.since().map(Instant::toString).orElse("-"));
        for (double number : arrivals.numbers()) {
            text.add(Double.toString(number));
        }
        return text.toString();
    }

    static Arrivals of(String column) {
        if (column.isEmpty()) {
            return Arrivals.NONE;
        }
        String[] parts = column.split(" ");
        var numbers = new double[parts.length - 1];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Double.parseDouble(parts[i + 1]);
        }
        return Arrivals.of(parts[0].equals("-") ? Optional.empty() : Optional.of(Instant.parse(parts[0])), numbers);
    }
}
