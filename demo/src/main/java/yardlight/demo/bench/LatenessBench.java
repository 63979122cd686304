package yardlight.demo.bench;

import java.time.Duration;
import java.util.List;

/**
 * How late rungs come while very many callouts wait: the waiting ones are armed first, then others are raised at a steady
 * rate whose second rung is due soon. Seen from outside: from the moment at which the event was posted, and the wait of the
 * rung, to the moment at which the mail server has the second text. So storing and sending count as lateness too.
 */
final class LatenessBench {

    private static final int EACH_TIME = 1_000;
    private static final int WARM = 500;
    private static final int DUE = WARM + 2 * EACH_TIME;
    private static final double PER_SECOND = 100;
    private static final int CONNECTIONS = 4;
    private static final int ARMING = 16;
    private static final Duration WAIT = Duration.ofSeconds(20);
    private static final Duration SETTLED = Duration.ofSeconds(5);
    private static final Duration AT_MOST = Duration.ofMinutes(10);

    private LatenessBench() {}

    static List<Row> run(BenchSettings settings) throws Exception {
        int waiting = (settings.armed() + NewAlarms.NO_FLOOD - 1) / NewAlarms.NO_FLOOD;
        BenchSetup setup = new BenchSetup(DUE + waiting, DUE + waiting, "", LatenessBench::rungs);
        Texts texts = new Texts();
        try (BenchGateway gateway = BenchGateway.open(settings.big(), setup, texts::take)) {
            raised(gateway, texts, 0, WARM);
            double alone = p99(raised(gateway, texts, WARM, EACH_TIME));
            long begin = System.nanoTime();
            new Paced(gateway.port(), ARMING, 1e6)
                    .run(
                            waiting,
                            (http, number, wanted) -> Paced.accepted(
                                    http.exchange(BenchEvents.several(DUE + number, NewAlarms.NO_FLOOD))));
            int armed = waiting * NewAlarms.NO_FLOOD;
            double perSecond = armed / ((System.nanoTime() - begin) / 1e9);
            texts.settle(SETTLED, AT_MOST);
            long[] late = raised(gateway, texts, WARM + EACH_TIME, EACH_TIME);
            String among = " with " + Figures.written(armed) + " callouts armed";
            return List.of(
                    Row.of("callouts armed a second, eight alarms in a post", perSecond),
                    Row.of("lateness of a rung, p50, ms" + among, Figures.millis(Figures.percentile(late, 0.5))),
                    Row.of("lateness of a rung, p99, ms" + among, p99(late), "with none of them", alone)
                            .aim("at most 1,000 ms"));
        }
    }

    private static double p99(long[] nanos) {
        return Figures.millis(Figures.percentile(nanos, 0.99));
    }

    /** Those that are due soon, and those that wait for longer than the bench takes. */
    private static String rungs(int site) {
        String soon = BenchSetup.rung(site, WAIT.toString());
        String later = BenchSetup.rung(site, "PT12H");
        return site < DUE ? soon + ", " + later : later;
    }

    private static long[] raised(BenchGateway gateway, Texts texts, int from, int count) throws Exception {
        long[] due = new long[count];
        new Paced(gateway.port(), CONNECTIONS, PER_SECOND).run(count, (http, number, wanted) -> {
            due[number] = System.nanoTime() + WAIT.toNanos();
            Paced.accepted(http.exchange(BenchEvents.event(from + number, "water-tank", "active")));
        });
        for (int i = 0; i < count; i++) {
            texts.awaitSecond(BenchSetup.address(from + i), AT_MOST);
        }
        long[] late = new long[count];
        for (int i = 0; i < count; i++) {
            late[i] = texts.second(BenchSetup.address(from + i)) - due[i];
        }
        return late;
    }
}
