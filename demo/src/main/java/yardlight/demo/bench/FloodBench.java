package yardlight.demo.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import yardlight.demo.bench.Load.Requests;
import yardlight.demo.bench.Load.Round;

/**
 * What is in use of the heap while boxes post for a long time far more than is taken: five times as many connections as keep
 * the gateway busy, each asking again at once, with the allowance that boxes have. Most are told to slow down; every
 * fiftieth post is news and is taken in any case. Looked at after a full collection.
 */
final class FloodBench {

    private static final int BUSY = 32;
    private static final int TIMES = 5;
    private static final int NEWS_EVERY = 50;
    private static final Duration SETTLING = Duration.ofSeconds(30);

    private FloodBench() {}

    static List<Row> run(BenchSettings settings) throws Exception {
        if (settings.flood().isZero()) {
            System.err.println("left out: flood, which --demo.bench.flood=PT1H asks for");
            return List.of();
        }
        int connections = BUSY * TIMES;
        try (BenchGateway gateway = BenchGateway.open(settings.strict(), BenchSetup.of(connections), letter -> {})) {
            Requests flood = flood(connections);
            new Load(gateway.port(), connections, SETTLING).run(flood);
            List<Double> hours = new ArrayList<>();
            List<Double> megabytes = new ArrayList<>();
            Tally tally = new Tally();
            long begin = System.nanoTime();
            do {
                tally.add(new Load(gateway.port(), connections, settings.look()).run(flood));
                hours.add((System.nanoTime() - begin) / 3.6e12);
                megabytes.add(Heap.liveMegabytes(gateway.pid()));
                System.err.printf("flood: %.2f h, heap %.1f MB%n", hours.get(hours.size() - 1), last(megabytes));
            } while (System.nanoTime() - begin < settings.flood().toNanos());
            double file = gateway.home().fileBytes() / 1_048_576.0;
            return rows(tally, hours, megabytes, file);
        }
    }

    private static List<Row> rows(Tally tally, List<Double> hours, List<Double> megabytes, double file) {
        String after = "after " + Figures.written(last(hours) * 60) + " minutes of flood";
        return List.of(
                Row.of(
                        "posts answered a second in the flood",
                        tally.all / tally.seconds,
                        "taken with 202",
                        tally.taken / tally.seconds),
                Row.of("heap in use " + after + ", MB", last(megabytes), "after the first look", megabytes.get(0))
                        .aim("flat"),
                Row.of("growth of the heap, MB an hour", Figures.slope(hours, megabytes))
                        .aim("flat"),
                Row.of("file " + after + ", MB", file));
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    /** Counts what was answered; anything but taken, slow down and busy is a mistake. */
    private static final class Tally {

        private long all;
        private long taken;
        private double seconds;

        void add(Round round) {
            if (!List.of(202, 429, 503).containsAll(round.answers().keySet())) {
                throw new IllegalStateException("answers must be 202, 429 or 503: " + round.answers());
            }
            all += round.nanos().length;
            taken += round.answers().getOrDefault(202, 0);
            seconds += round.seconds();
        }
    }

    private static Requests flood(int connections) {
        byte[][] active = new byte[connections][];
        byte[][] normal = new byte[connections][];
        for (int i = 0; i < connections; i++) {
            active[i] = BenchEvents.event(i, "water-tank", "active");
            normal[i] = BenchEvents.event(i, "water-tank", "normal");
        }
        return (connection, number) -> number % NEWS_EVERY == NEWS_EVERY - 1 ? normal[connection] : active[connection];
    }
}
