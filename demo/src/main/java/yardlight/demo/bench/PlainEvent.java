package yardlight.demo.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** An event as the bare endpoint reads it: all that the contract allows, checked as the contract says. */
record PlainEvent(
        String id,
        String point,
        String condition,
        String state,
        String priority,
        BigDecimal value,
        BigDecimal limit,
        String unit,
        String at,
        String text) {

    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
    private static final List<String> PRIORITIES = List.of("low", "medium", "high", "critical");

    boolean right() {
        return matches(point)
                && matches(condition)
                && ("active".equals(state) || "normal".equals(state))
                && Optional.ofNullable(priority).map(PRIORITIES::contains).orElse(true)
                && atMost(id, 64)
                && atMost(unit, 16)
                && atMost(text, 200);
    }

    private static boolean matches(String word) {
        return word != null && ID.matcher(word).matches();
    }

    private static boolean atMost(String words, int length) {
        return words == null || words.length() <= length;
    }

    /** As long as the gateway's. */
    Map<String, Object> receipt() {
        String alarm = "site-0." + point + "." + condition + ".1";
        return Map.of(
                "received",
                Instant.now().toString(),
                "results",
                List.of(Map.of("outcome", "occurred", "alarm", alarm)));
    }
}
