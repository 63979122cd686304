package yardlight.gateway.readings;

import java.math.BigDecimal;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardlight.db.journal.ReadingRows.Fate;
import yardlight.gateway.lane.PostedReading;

/** What a box posted, and what came of it, in the words of the contract and in short. */
final class Told {

    private static final int SHOWN = 3;

    private Told() {}

    static String readings(List<PostedReading> readings) {
        String first = readings.stream()
                .limit(SHOWN)
                .map(one -> one.reading().point() + " "
                        + BigDecimal.valueOf(one.kept()).stripTrailingZeros().toPlainString()
                        + one.unit().map(unit -> " " + unit).orElse(""))
                .collect(Collectors.joining("; "));
        return readings.size() > SHOWN ? first + "; +" + (readings.size() - SHOWN) : first;
    }

    static String fates(List<Fate> fates) {
        return fates.stream()
                .collect(Collectors.groupingBy(Bundle::word, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(entry -> entry.getValue() == 1 ? entry.getKey() : entry.getKey() + " ×" + entry.getValue())
                .collect(Collectors.joining(", "));
    }
}
