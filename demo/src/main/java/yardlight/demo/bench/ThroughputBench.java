package yardlight.demo.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import yardlight.demo.bench.Load.Requests;
import yardlight.demo.bench.Load.Round;

/**
 * Events answered 202 a second. The limit is the same server, the same key and the same body with one wrong word: it is
 * read, checked and answered with 422, and nothing is stored. Warmed up first, then in interleaved rounds.
 */
final class ThroughputBench {

    private static final String EVENT = "{\"point\":\"water-tank\",\"condition\":\"high-high\",\"state\":\"%s\","
            + "\"value\":18.4,\"limit\":18.0,\"unit\":\"ft\",\"text\":\"float and transmitter agree\"}";

    private final BenchSettings settings;
    private final BenchGateway gateway;
    private final byte[][] events;
    private final byte[][] refused;

    ThroughputBench(BenchSettings settings, BenchGateway gateway) {
        this.settings = settings;
        this.gateway = gateway;
        int most = settings.connections().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElseThrow();
        events = requests(most, "active");
        refused = requests(most, "neither");
    }

    private byte[][] requests(int count, String state) {
        byte[][] requests = new byte[count][];
        for (int i = 0; i < count; i++) {
            requests[i] = HttpConnection.post("/api/v1/events", gateway.key(i), String.format(EVENT, state));
        }
        return requests;
    }

    List<Row> rows() throws InterruptedException, ExecutionException {
        int most = events.length;
        Duration half = settings.warmUp().dividedBy(2);
        load(most, half, events);
        load(most, half, refused);
        List<Row> rows = new ArrayList<>();
        for (int connections : settings.connections()) {
            rows.addAll(series(connections));
        }
        return rows;
    }

    private List<Row> series(int connections) throws InterruptedException, ExecutionException {
        double[] ours = new double[settings.rounds()];
        double[] bare = new double[settings.rounds()];
        double[] oursTail = new double[settings.rounds()];
        double[] bareTail = new double[settings.rounds()];
        for (int i = 0; i < settings.rounds(); i++) {
            Round limit = load(connections, settings.round(), refused);
            Round round = load(connections, settings.round(), events);
            bare[i] = limit.perSecond(422);
            ours[i] = round.perSecond(202);
            bareTail[i] = Figures.millis(Figures.percentile(limit.nanos(), 0.99));
            oursTail[i] = Figures.millis(Figures.percentile(round.nanos(), 0.99));
        }
        String at = ", " + connections + " connections";
        return List.of(
                Row.of(
                        "events answered 202 a second" + at,
                        Figures.median(ours),
                        "same event refused with 422",
                        Figures.median(bare)),
                Row.of(
                        "p99 of that answer, ms" + at,
                        Figures.median(oursTail),
                        "same event refused with 422",
                        Figures.median(bareTail)));
    }

    private Round load(int connections, Duration length, byte[][] requests)
            throws InterruptedException, ExecutionException {
        Requests same = (connection, number) -> requests[connection];
        return new Load(gateway.port(), connections, length).run(same);
    }

    static List<Row> run(BenchSettings settings) throws IOException, InterruptedException, ExecutionException {
        int boxes = settings.connections().stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElseThrow();
        try (BenchGateway gateway = new BenchGateway(settings.jar(), boxes, letter -> {})) {
            return new ThroughputBench(settings, gateway).rows();
        }
    }
}
