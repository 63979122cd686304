package yardlight.demo.bench;

import java.time.Duration;
import java.util.List;
import java.util.stream.LongStream;

/**
 * From the answer 202 to the moment at which the mail server has the text, at a hundred alarms a second, each for somebody
 * else. The limit is Jakarta Mail alone, over a connection kept open, to the same server at the same rate, in rounds
 * between ours.
 */
final class DeliveryBench {

    private static final double PER_SECOND = 100;
    private static final int CONNECTIONS = 4;
    private static final int ROUNDS = 4;
    private static final Duration AT_MOST = Duration.ofSeconds(60);

    private final Texts texts;
    private final BenchGateway gateway;
    private int used;

    private DeliveryBench(Texts texts, BenchGateway gateway) {
        this.texts = texts;
        this.gateway = gateway;
    }

    static List<Row> run(BenchSettings settings) throws Exception {
        Texts texts = new Texts();
        int warm = settings.alarms() / 2;
        BenchSetup setup = BenchSetup.of(settings.alarms() + warm);
        try (BenchGateway gateway = BenchGateway.open(settings.small(), setup, texts::take);
                BareMail mail = new BareMail(gateway.carrierPort(), texts)) {
            DeliveryBench bench = new DeliveryBench(texts, gateway);
            bench.ours(warm);
            mail.nanos(0, warm / 2, 4 * PER_SECOND);
            int each = settings.alarms() / ROUNDS;
            LongStream ours = LongStream.empty();
            LongStream bare = LongStream.empty();
            for (int round = 1; round <= ROUNDS; round++) {
                ours = LongStream.concat(ours, LongStream.of(bench.ours(each)));
                bare = LongStream.concat(bare, LongStream.of(mail.nanos(round, each, PER_SECOND)));
            }
            return rows(ours.toArray(), bare.toArray());
        }
    }

    private static List<Row> rows(long[] ours, long[] bare) {
        return List.of(
                row("p50", 0.5, ours, bare), row("p99", 0.99, ours, bare).aim("at most 250 ms, ratio at most 2"));
    }

    private static Row row(String name, double share, long[] ours, long[] bare) {
        return Row.of(
                "from the answer to the mail server at 100 alarms/s, " + name + ", ms",
                Figures.millis(Figures.percentile(ours, share)),
                "Jakarta Mail alone at the same rate",
                Figures.millis(Figures.percentile(bare, share)));
    }

    private long[] ours(int count) throws Exception {
        int from = used;
        used += count;
        int before = texts.taken();
        long[] answered = new long[count];
        new Paced(gateway.port(), CONNECTIONS, PER_SECOND).run(count, (http, number, wanted) -> {
            Paced.accepted(http.exchange(BenchEvents.event(from + number, "water-tank", "active")));
            answered[number] = System.nanoTime();
        });
        texts.await(before + count, AT_MOST);
        long[] nanos = new long[count];
        for (int i = 0; i < count; i++) {
            nanos[i] = texts.first(BenchSetup.address(from + i)) - answered[i];
        }
        return nanos;
    }
}
