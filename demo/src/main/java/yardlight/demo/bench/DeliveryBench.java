package yardlight.demo.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import yardlight.demo.carrier.Letter;

/**
 * From the answer 202 to the moment at which the mail server has the text, at a few alarms a second, each for somebody
 * else. The limit is Jakarta Mail alone, over a connection kept open, to the same server.
 */
final class DeliveryBench {

    private static final Duration BETWEEN = Duration.ofMillis(250);
    private static final Duration AT_MOST = Duration.ofSeconds(60);
    private static final String EVENT =
            "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"active\",\"priority\":\"high\"}";

    private final Map<String, Long> taken = new ConcurrentHashMap<>();
    private final CountDownLatch all;
    private final int alarms;

    private DeliveryBench(int alarms) {
        this.alarms = alarms;
        all = new CountDownLatch(alarms);
    }

    static List<Row> run(BenchSettings settings) throws Exception {
        DeliveryBench bench = new DeliveryBench(settings.alarms());
        try (BenchGateway gateway = BenchGateway.open(settings.jar(), settings.alarms(), bench::take)) {
            long[] ours = bench.ours(gateway);
            long[] bare = BareMail.nanos(gateway.carrierPort(), settings.alarms(), bench.taken);
            return List.of(row("p50", 0.5, ours, bare), row("p99", 0.99, ours, bare));
        }
    }

    private static Row row(String name, double share, long[] ours, long[] bare) {
        return Row.of(
                "from the answer to the mail server, " + name + ", ms",
                Figures.millis(Figures.percentile(ours, share)),
                "Jakarta Mail alone, connection kept open",
                Figures.millis(Figures.percentile(bare, share)));
    }

    private void take(Letter letter) {
        if (taken.putIfAbsent(letter.to(), System.nanoTime()) == null) {
            all.countDown();
        }
    }

    private long[] ours(BenchGateway gateway) throws IOException, InterruptedException {
        long[] answered = new long[alarms];
        try (HttpConnection http = new HttpConnection(gateway.port())) {
            for (int i = 0; i < alarms; i++) {
                int status = http.exchange(HttpConnection.post("/api/v1/events", gateway.key(i), EVENT));
                answered[i] = System.nanoTime();
                if (status != 202) {
                    throw new IllegalStateException("an event was answered with " + status);
                }
                Thread.sleep(BETWEEN.toMillis());
            }
        }
        if (!all.await(AT_MOST.toMillis(), TimeUnit.MILLISECONDS)) {
            throw new IllegalStateException(all.getCount() + " texts did not arrive within " + AT_MOST);
        }
        return IntStream.range(0, alarms)
                .mapToLong(i -> taken.get(BenchSetup.address(i)) - answered[i])
                .toArray();
    }
}
