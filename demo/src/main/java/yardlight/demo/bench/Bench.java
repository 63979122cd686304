package yardlight.demo.bench;

import java.util.ArrayList;
import java.util.List;
import org.springframework.boot.logging.LogLevel;
import org.springframework.boot.logging.LoggingSystem;

/** Runs all measurements and prints them as one table in Markdown. */
public final class Bench {

    private Bench() {}

    /**
     * @param args as in {@link BenchSettings}
     */
    public static void run(String... args) throws Exception {
        LoggingSystem.get(Bench.class.getClassLoader()).setLogLevel(LoggingSystem.ROOT_LOGGER_NAME, LogLevel.WARN);
        BenchSettings settings = BenchSettings.from(args);
        System.out.println("On " + Runtime.getRuntime().availableProcessors() + " processors, Java "
                + Runtime.version().feature() + ", load from the same machine; medians.");
        List<Row> rows = new ArrayList<>();
        for (String part : settings.parts()) {
            System.err.println("measuring: " + part);
            rows.addAll(rows(part, settings));
        }
        System.out.println();
        System.out.println(Row.HEAD);
        rows.forEach(System.out::println);
    }

    private static List<Row> rows(String part, BenchSettings settings) throws Exception {
        return switch (part) {
            case "start" -> StartBench.run(settings);
            case "delivery" -> DeliveryBench.run(settings);
            case "events" -> ThroughputBench.run(settings);
            default -> throw new IllegalArgumentException("part must be start, delivery or events: " + part);
        };
    }
}
