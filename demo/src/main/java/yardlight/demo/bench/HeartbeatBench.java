package yardlight.demo.bench;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import yardlight.demo.gateway.GatewayProcess;

/**
 * All boxes send a heartbeat each minute, ten boxes to a site, and beside them new alarms come in. Measured is one whole
 * minute, in which each box is heard once and deadlines pass as they do at any time later. Time until an answer counts from
 * the moment at which it should have been asked for.
 */
final class HeartbeatBench {

    private static final String HEARTBEAT = ", 'heartbeat': {'every': 'PT1M'}";
    private static final int BOXES_AT_A_SITE = 10;
    private static final double EVENTS_PER_SECOND = 100;
    /** Each box has a connection of its own: as many as wait for the disk at a time must not be what holds the others up. */
    private static final int BEATING = 96;

    private static final int POSTING = 16;
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration QUIET = Duration.ofSeconds(20);

    private final int boxes;
    private final int sites;
    private final BenchGateway gateway;
    private int events;
    private int beats;

    private HeartbeatBench(int boxes, int sites, BenchGateway gateway) {
        this.boxes = boxes;
        this.sites = sites;
        this.gateway = gateway;
    }

    static List<Row> run(BenchSettings settings) throws Exception {
        int sites = Math.max(1, settings.boxes() / BOXES_AT_A_SITE);
        BenchSetup setup = new BenchSetup(sites, settings.boxes(), HEARTBEAT, site -> BenchSetup.rung(site, "PT2H"));
        double perSecond = settings.boxes() / 60.0;
        Seen seen;
        try (BenchGateway gateway = BenchGateway.open(settings.big(), setup, letter -> {})) {
            seen = new HeartbeatBench(settings.boxes(), sites, gateway).seen(settings.beating(), perSecond);
        }
        return rows(settings, perSecond, seen, bareCores(settings, perSecond + EVENTS_PER_SECOND));
    }

    /**
     * @param cores processors kept busy
     * @param without the same without heartbeats
     * @param nanos until each event was answered
     */
    private record Seen(double cores, double without, long[] nanos, double megabytes) {}

    private Seen seen(Duration warmUp, double perSecond) throws Exception {
        both(warmUp, perSecond);
        Cpu.Meter meter = new Cpu.Meter(gateway.pid());
        long[] nanos = both(MINUTE, perSecond);
        double cores = meter.lap().cores();
        posted(QUIET);
        return new Seen(cores, meter.lap().cores(), nanos, StartBench.residentMegabytes(gateway.pid()));
    }

    private static List<Row> rows(BenchSettings settings, double perSecond, Seen seen, double bare) {
        String of = Figures.written(perSecond) + " heartbeats and 100 new alarms a second";
        return List.of(
                Row.of("processors kept busy by " + of, seen.cores(), "as many at the bare endpoint", bare),
                Row.of("processors for the heartbeats alone", seen.cores() - seen.without())
                        .aim("under 0.5"),
                Row.of("p99 of an event beside them, ms", Figures.millis(Figures.percentile(seen.nanos(), 0.99)))
                        .aim("under 50"),
                Row.of(
                        "resident memory with " + Figures.written(settings.boxes()) + " boxes, MB (-Xmx"
                                + settings.bigHeap() + ")",
                        seen.megabytes()));
    }

    /** What as many requests cost that are read and answered and nothing else. */
    private static double bareCores(BenchSettings settings, double perSecond) throws Exception {
        try (BenchGateway pattern = ThroughputBench.pattern(settings)) {
            try (GatewayProcess limits =
                    LimitServer.start(pattern.home(), 1, settings.small().jvm())) {
                byte[] request = BenchEvents.event(LimitController.BARE, 0, "water-tank", "active");
                Paced paced = new Paced(limits.address().getPort(), BEATING + POSTING, perSecond);
                int count = (int) (perSecond * QUIET.toSeconds());
                paced.run(count, (http, number, wanted) -> Paced.accepted(http.exchange(request)));
                Cpu.Meter meter = new Cpu.Meter(limits.pid());
                paced.run(count, (http, number, wanted) -> Paced.accepted(http.exchange(request)));
                return meter.lap().cores();
            }
        }
    }

    private long[] both(Duration length, double perSecond) throws Exception {
        int count = (int) (perSecond * length.toSeconds());
        int from = beats;
        beats += count;
        ExecutorService second = Executors.newSingleThreadExecutor();
        try {
            Future<Void> beating = second.submit(() -> {
                new Paced(gateway.port(), BEATING, perSecond)
                        .run(
                                count,
                                (http, number, wanted) ->
                                        Paced.accepted(http.exchange(BenchEvents.heartbeat((from + number) % boxes))));
                return null;
            });
            long[] nanos = posted(length);
            beating.get();
            return nanos;
        } finally {
            second.shutdownNow();
        }
    }

    /** New alarms only, each of another site than the one before. */
    private long[] posted(Duration length) throws InterruptedException, ExecutionException {
        int count = (int) (EVENTS_PER_SECOND * length.toSeconds());
        int from = events;
        events += count;
        long[] nanos = new long[count];
        new Paced(gateway.port(), POSTING, EVENTS_PER_SECOND).run(count, (http, number, wanted) -> {
            int alarm = from + number;
            Paced.accepted(http.exchange(BenchEvents.event(alarm % sites, "valve-" + alarm / sites, "active")));
            nanos[number] = System.nanoTime() - wanted;
        });
        return nanos;
    }
}
