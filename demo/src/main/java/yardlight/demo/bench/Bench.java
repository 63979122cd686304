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
        if (LimitServer.wanted(args)) {
            LimitServer.run(args);
            return;
        }
        Runtime.getRuntime().addShutdownHook(new Thread(Bench::endTheRest));
        BenchSettings settings = BenchSettings.from(args);
        System.out.println(
                Machine.described() + ". Load from the same machine; medians of " + settings.rounds() + " rounds.");
        List<Row> rows = new ArrayList<>();
        for (String part : settings.only()) {
            System.err.println("measuring: " + part);
            long begin = System.nanoTime();
            List<Row> found = rows(part, settings);
            found.forEach(System.err::println);
            System.err.printf("%s took %.0f s%n", part, (System.nanoTime() - begin) / 1e9);
            rows.addAll(found);
        }
        System.out.println();
        System.out.println(Row.HEAD);
        rows.forEach(System.out::println);
    }

    /** Whoever breaks off the bench is not to find its gateways running later. */
    private static void endTheRest() {
        ProcessHandle.current().children().forEach(ProcessHandle::destroy);
    }

    private static List<Row> rows(String part, BenchSettings settings) throws Exception {
        return switch (part) {
            case "start" -> StartBench.run(settings);
            case "throughput" -> ThroughputBench.run(settings);
            case "delivery" -> DeliveryBench.run(settings);
            case "lateness" -> LatenessBench.run(settings);
            case "heartbeats" -> HeartbeatBench.run(settings);
            case "readings" -> ReadingsBench.run(settings);
            case "scale" -> ScaleBench.run(settings);
            case "flood" -> FloodBench.run(settings);
            default ->
                throw new IllegalArgumentException(
                        "part must be start, throughput, delivery, lateness, heartbeats, readings, scale or flood: "
                                + part);
        };
    }
}
