package yardlight.demo.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import yardlight.demo.bench.Load.Requests;
import yardlight.demo.bench.Load.Round;

/**
 * Events answered 202 a second: repeats of known alarms, and alarms that are all new. The limit is the same server, the
 * same key and the same body with one wrong word: it is read, checked and answered with 422, and nothing is stored.
 * Warmed up first, then measured in interleaved rounds.
 */
final class ThroughputBench {

    private static final int ACCEPTED = 202;
    private static final int REFUSED = 422;
    private static final String LIMIT = "an event refused with 422";

    private final BenchSettings settings;
    private final BenchGateway gateway;
    private final BenchEvents events;
    private final NewAlarms newAlarms;

    private ThroughputBench(BenchSettings settings, BenchGateway gateway) {
        this.settings = settings;
        this.gateway = gateway;
        events = new BenchEvents(gateway, settings.mostConnections());
        newAlarms = new NewAlarms(gateway, settings.sites());
    }

    static List<Row> run(BenchSettings settings) throws IOException, InterruptedException, ExecutionException {
        int sites = Math.max(settings.sites(), settings.mostConnections());
        try (BenchGateway gateway = BenchGateway.open(settings.jar(), sites, letter -> {})) {
            return new ThroughputBench(settings, gateway).rows();
        }
    }

    private List<Row> rows() throws InterruptedException, ExecutionException {
        int series = settings.connections().size();
        int alarmsInARound = newAlarms.all() / (series * settings.rounds() + 1);
        Duration half = settings.warmUp().dividedBy(2);
        load(settings.mostConnections(), half, events.refused());
        load(settings.mostConnections(), half, events.repeated());
        load(settings.mostConnections(), half, newAlarms.next(alarmsInARound));
        List<Row> rows = new ArrayList<>();
        for (int connections : settings.connections()) {
            rows.addAll(series(connections, alarmsInARound));
        }
        return rows;
    }

    private List<Row> series(int connections, int alarms) throws InterruptedException, ExecutionException {
        List<Round> bare = new ArrayList<>();
        List<Round> repeated = new ArrayList<>();
        List<Round> occurred = new ArrayList<>();
        for (int i = 0; i < settings.rounds(); i++) {
            bare.add(load(connections, settings.round(), events.refused()));
            repeated.add(load(connections, settings.round(), events.repeated()));
            occurred.add(load(connections, settings.round(), newAlarms.next(alarms)));
        }
        String at = ", " + connections + " connections";
        double limit = perSecond(bare, REFUSED);
        return List.of(
                Row.of("repeats answered 202 a second" + at, perSecond(repeated, ACCEPTED), LIMIT, limit),
                Row.of("new alarms answered 202 a second" + at, perSecond(occurred, ACCEPTED), LIMIT, limit),
                Row.of("p99 of a repeat, ms" + at, tail(repeated), LIMIT, tail(bare)));
    }

    private static double perSecond(List<Round> rounds, int status) {
        return Figures.median(
                rounds.stream().mapToDouble(round -> round.perSecond(status)).toArray());
    }

    private static double tail(List<Round> rounds) {
        return Figures.millis(Figures.median(rounds.stream()
                .mapToDouble(round -> Figures.percentile(round.nanos(), 0.99))
                .toArray()));
    }

    private Round load(int connections, Duration length, Requests requests)
            throws InterruptedException, ExecutionException {
        return new Load(gateway.port(), connections, length).run(requests);
    }
}
