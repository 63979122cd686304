package yardlight.demo.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** Runs all measurements and prints them as one table in Markdown. */
public final class Bench {

    private Bench() {}

    /**
     * @param args as in {@link BenchSettings}
     */
    public static void run(String... args) throws Exception {
        BenchSettings settings = BenchSettings.from(args);
        System.out.println("On " + Runtime.getRuntime().availableProcessors() + " processors, Java "
                + Runtime.version().feature() + ", load from the same machine; medians.");
        List<Row> rows = new ArrayList<>();
        rows.addAll(part("start and memory", () -> StartBench.run(settings)));
        rows.addAll(part("from the answer to the mail server", () -> DeliveryBench.run(settings)));
        rows.addAll(part("events a second", () -> ThroughputBench.run(settings)));
        System.out.println();
        System.out.println(Row.HEAD);
        rows.forEach(System.out::println);
    }

    private static List<Row> part(String name, Callable<List<Row>> part) throws Exception {
        System.err.println("measuring " + name + " ...");
        return part.call();
    }
}
