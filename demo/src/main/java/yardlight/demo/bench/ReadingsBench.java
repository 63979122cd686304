package yardlight.demo.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;

/**
 * A thousand points, each read once a minute, on one small gateway that has their readings of 400 days: what that costs, and how
 * long it takes to read one point's 400 days back. The past of one point is posted as a late backlog and looked after by
 * the gateway itself; in the stopped file it is then given to all others too.
 */
final class ReadingsBench {

    private static final int POINTS = 1_000;
    private static final int POINTS_OF_A_BOX = 10;
    private static final int BOXES = POINTS / POINTS_OF_A_BOX;
    private static final int DAYS = 400;
    private static final int PAST = DAYS - 1;
    private static final int MINUTES = 1_440;
    private static final int AT_ONCE = 2_000;
    private static final int CONNECTIONS = 4;
    private static final int ASKED = 40;
    private static final Duration AT_MOST = Duration.ofMinutes(10);
    private static final String PATH = "/api/v1/readings";
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final BenchGateway gateway;
    private final ReadingsHome home;
    private final Instant today = Instant.now().truncatedTo(ChronoUnit.DAYS);
    private final Random random = new Random(400);

    private ReadingsBench(BenchGateway gateway) {
        this.gateway = gateway;
        this.home = new ReadingsHome(gateway.home());
    }

    static List<Row> run(BenchSettings settings) throws Exception {
        BenchSetup setup = BenchSetup.of(BOXES).with(POINTS_OF_A_BOX, "'unit': 'ft', 'limits': {'high': 900}");
        try (BenchGateway gateway = BenchGateway.prepare(settings.small(), setup, letter -> {})) {
            return new ReadingsBench(gateway).rows(settings);
        }
    }

    private List<Row> rows(BenchSettings settings) throws Exception {
        List<Row> rows = new ArrayList<>(past());
        gateway.start();
        minutes(settings.warmUp());
        Cpu.Meter meter = new Cpu.Meter(gateway.pid());
        minutes(settings.measuring());
        double busy = meter.lap().cores();
        LockSupport.parkNanos(settings.warmUp().toNanos());
        double idle = meter.lap().cores();
        long[] nanos = asked();
        rows.add(Row.of("processors kept busy by " + Figures.written(POINTS) + " points read once a minute", busy)
                .aim("under 0.25"));
        rows.add(Row.of("the same gateway with none of it", idle));
        rows.add(Row.of("400 days of one point read back, p50, ms", Figures.millis(Figures.percentile(nanos, 0.5)))
                .aim("under 200"));
        rows.add(Row.of("400 days of one point read back, p99, ms", Figures.millis(Figures.percentile(nanos, 0.99)))
                .aim("under 200"));
        rows.add(Row.of("resident memory beside it, MB", StartBench.residentMegabytes(gateway.pid())));
        return rows;
    }

    /** Makes the past of all points, and says how much of the file it takes. */
    private List<Row> past() throws Exception {
        long empty = home.compacted();
        gateway.start();
        backlog();
        gateway.stop();
        long loose = home.compacted();
        home.dueAtOnce();
        gateway.start();
        awaitSums();
        gateway.stop();
        ReadingsHome.Packed packed = home.packed(today);
        home.copyToAll(POINTS, BOXES, POINTS_OF_A_BOX);
        long all = home.compacted();
        double readings = (double) PAST * MINUTES;
        return List.of(
                Row.of("bytes of a loose reading", (loose - empty) / readings),
                Row.of("bytes of a packed reading", packed.wholeBytes() / (double) packed.wholeDays() / MINUTES),
                Row.of("bytes of a step of 15 minutes", packed.summedBytes() / (double) packed.summedDays() / 96),
                Row.of("file with 400 days of " + Figures.written(POINTS) + " points, MB", all / 1_048_576.0),
                Row.of("the same for one reading, bytes", (all - empty) / readings / POINTS));
    }

    /** A tank that fills and is pumped down, in hundredths of a foot with a little noise. */
    private void backlog() throws IOException {
        Instant from = today.minus(Duration.ofDays(PAST));
        double level = 8;
        boolean pumping = false;
        try (HttpConnection http = new HttpConnection(gateway.port())) {
            StringBuilder some = new StringBuilder("[");
            int count = 0;
            for (int minute = 0; minute < PAST * MINUTES; minute++) {
                pumping = pumping ? level > 4 : level > 14;
                level += pumping ? -0.08 : 0.012;
                double shown = level + random.nextGaussian() * 0.01;
                some.append(count == 0 ? "" : ",").append(reading(0, shown, from.plusSeconds(60L * minute)));
                if (++count == AT_ONCE || minute == PAST * MINUTES - 1) {
                    Paced.accepted(http.exchange(HttpConnection.post(
                            PATH, BenchHome.key(0), some.append(']').toString())));
                    some = new StringBuilder("[");
                    count = 0;
                }
            }
        }
    }

    private static String reading(int point, double value, Instant at) {
        return String.format(
                Locale.ROOT, "{\"point\":\"point-%d\",\"value\":%.2f,\"unit\":\"ft\",\"at\":\"%s\"}", point, value, at);
    }

    /** The oldest day is summed up last: then it has 96 samples. */
    private void awaitSums() throws IOException, InterruptedException {
        Instant day = today.minus(Duration.ofDays(PAST - 1));
        long until = System.nanoTime() + AT_MOST.toNanos();
        while (samples(day, day.plus(Duration.ofDays(1)), 5_000) > 96) {
            if (System.nanoTime() > until) {
                throw new IllegalStateException("the gateway has not looked after its readings");
            }
            LockSupport.parkNanos(Duration.ofSeconds(1).toNanos());
        }
    }

    /** Each box posts its ten points once a minute, spread over the minute. */
    private void minutes(Duration length) throws Exception {
        double perSecond = BOXES / 60.0;
        int count = (int) Math.max(1, perSecond * length.toSeconds());
        new Paced(gateway.port(), CONNECTIONS, perSecond).run(count, (http, number, wanted) -> {
            int box = number % BOXES;
            Instant now = Instant.now();
            StringBuilder all = new StringBuilder("{\"readings\":[");
            for (int point = 0; point < POINTS_OF_A_BOX; point++) {
                all.append(point == 0 ? "" : ",").append(reading(point, 8 + Math.sin(number) / 10, now));
            }
            Paced.accepted(http.exchange(HttpConnection.post(
                    PATH, BenchHome.key(box), all.append("]}").toString())));
        });
    }

    private long[] asked() throws IOException, InterruptedException {
        long[] nanos = new long[ASKED];
        Instant from = today.minus(Duration.ofDays(DAYS));
        for (int i = -ASKED / 2; i < ASKED; i++) {
            long begin = System.nanoTime();
            samples(from, today.plus(Duration.ofDays(1)), 1_000);
            if (i >= 0) {
                nanos[i] = System.nanoTime() - begin;
            }
        }
        return nanos;
    }

    /** How many samples there are, of another point each time. */
    private int samples(Instant from, Instant to, int most) throws IOException, InterruptedException {
        int site = most == 5_000 ? 0 : random.nextInt(BOXES);
        int point = most == 5_000 ? 0 : random.nextInt(POINTS_OF_A_BOX);
        URI address = URI.create("http://127.0.0.1:" + gateway.port() + PATH + "?site=site-" + site + "&point=point-"
                + point + "&from=" + from + "&to=" + to + "&points=" + most);
        HttpRequest request = HttpRequest.newBuilder(address)
                .header("Authorization", BenchGateway.login())
                .build();
        HttpResponse<String> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException("readings were answered with " + answer.statusCode());
        }
        return answer.body().split("\"at\"", -1).length - 1;
    }
}
