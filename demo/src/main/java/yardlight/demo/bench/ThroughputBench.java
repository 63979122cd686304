package yardlight.demo.bench;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import yardlight.demo.bench.Load.Requests;
import yardlight.demo.bench.Load.Round;
import yardlight.demo.gateway.GatewayProcess;

/**
 * Events answered 202 a second: repeats of known alarms, and alarms that are all new. Held against a bare endpoint, against
 * an event that the gateway itself refuses, and against the plain way to store. Everything is warmed up first, then
 * measured in interleaved rounds.
 */
final class ThroughputBench {

    private static final String EVENTS = "/api/v1/events";

    /** What is asked for in turn, and the answer that it must get. */
    private enum Kind {
        BARE(202),
        REFUSED(422),
        REPEATED(202),
        NEW(202),
        PLAIN(202),
        ROWS(202);

        private final int status;

        Kind(int status) {
            this.status = status;
        }
    }

    private final BenchSettings settings;
    private final int gateway;
    private final int limits;
    private final NewAlarms newAlarms;

    private ThroughputBench(BenchSettings settings, int gateway, int limits) {
        this.settings = settings;
        this.gateway = gateway;
        this.limits = limits;
        newAlarms = new NewAlarms(settings.sites(), NewAlarms.NO_FLOOD);
    }

    static List<Row> run(BenchSettings settings)
            throws IOException, InterruptedException, ExecutionException, SQLException {
        int sites = Math.max(settings.sites(), settings.mostConnections());
        try (BenchGateway pattern = pattern(settings);
                BenchGateway gateway = BenchGateway.open(settings.loaded(), BenchSetup.of(sites), letter -> {})) {
            try (GatewayProcess limits =
                    LimitServer.start(pattern.home(), sites, settings.loaded().jvm())) {
                return new ThroughputBench(
                                settings, gateway.port(), limits.address().getPort())
                        .rows();
            }
        }
    }

    /** A gateway that has stored one new alarm and was stopped: the rows are what the plain way has to write. */
    static BenchGateway pattern(BenchSettings settings) throws IOException, InterruptedException, SQLException {
        BenchGateway pattern = BenchGateway.open(settings.small(), BenchSetup.of(1), letter -> {});
        try (HttpConnection http = new HttpConnection(pattern.port())) {
            Paced.accepted(http.exchange(BenchEvents.event(0, "water-tank", "active")));
        }
        pattern.stop();
        return pattern;
    }

    private List<Row> rows() throws InterruptedException, ExecutionException {
        int toWarmUp = newAlarms.all() / 2;
        for (Kind kind : Kind.values()) {
            load(kind, settings.mostConnections(), settings.warmUp(), toWarmUp);
        }
        int alarms = (newAlarms.all() - toWarmUp) / (settings.connections().size() * settings.rounds());
        List<Row> rows = new ArrayList<>();
        for (int connections : settings.connections()) {
            rows.addAll(series(connections, alarms));
        }
        return rows;
    }

    private List<Row> series(int connections, int alarms) throws InterruptedException, ExecutionException {
        Map<Kind, List<Round>> rounds = new EnumMap<>(Kind.class);
        for (int i = 0; i < settings.rounds(); i++) {
            for (Kind kind : Kind.values()) {
                rounds.computeIfAbsent(kind, any -> new ArrayList<>())
                        .add(load(kind, connections, settings.round(), alarms));
            }
        }
        String at = ", " + connections + " connections";
        double bare = perSecond(rounds, Kind.BARE);
        double plain = perSecond(rounds, Kind.PLAIN);
        double stored = perSecond(rounds, Kind.ROWS) * LimitController.AT_ONCE;
        double occurred = perSecond(rounds, Kind.NEW);
        double repeated = perSecond(rounds, Kind.REPEATED);
        return List.of(
                Row.of("new alarms answered 202 a second" + at, occurred, "bare endpoint", bare)
                        .aim("at least 0.30"),
                Row.of("repeats answered 202 a second" + at, repeated, "bare endpoint", bare)
                        .aim("at least 0.50"),
                Row.of("new alarms against the plain way" + at, occurred, "a commit and a sync for each", plain)
                        .aim("at least 5"),
                Row.of("new alarms against their rows alone" + at, occurred, "a hundred at once, nothing else", stored),
                Row.of("events refused with 422 a second" + at, perSecond(rounds, Kind.REFUSED), "bare endpoint", bare),
                Row.of("p99 of a new alarm, ms" + at, tail(rounds, Kind.NEW), "bare endpoint", tail(rounds, Kind.BARE)),
                Row.of(
                        "p99 of a repeat, ms" + at,
                        tail(rounds, Kind.REPEATED),
                        "bare endpoint",
                        tail(rounds, Kind.BARE)));
    }

    private static double perSecond(Map<Kind, List<Round>> rounds, Kind kind) {
        return Figures.median(rounds.get(kind).stream()
                .mapToDouble(round -> round.perSecond(kind.status))
                .toArray());
    }

    private static double tail(Map<Kind, List<Round>> rounds, Kind kind) {
        return Figures.millis(Figures.median(rounds.get(kind).stream()
                .mapToDouble(round -> Figures.percentile(round.nanos(), 0.99))
                .toArray()));
    }

    private Round load(Kind kind, int connections, Duration length, int alarms)
            throws InterruptedException, ExecutionException {
        return switch (kind) {
            case BARE, PLAIN -> new Load(limits, connections, length).run(requests(kind, connections, alarms));
            case ROWS -> new Load(limits, 1, length).run(requests(kind, 1, alarms));
            case REFUSED, REPEATED, NEW ->
                new Load(gateway, connections, length).run(requests(kind, connections, alarms));
        };
    }

    private Requests requests(Kind kind, int connections, int alarms) {
        return switch (kind) {
            case BARE -> BenchEvents.same(LimitController.BARE, connections, "active");
            case PLAIN -> BenchEvents.same(LimitController.PLAIN, connections, "active");
            case ROWS -> BenchEvents.same(LimitController.ROWS, connections, "active");
            case REFUSED -> BenchEvents.same(EVENTS, connections, "neither");
            case REPEATED -> BenchEvents.same(EVENTS, connections, "active");
            case NEW -> newAlarms.next(alarms);
        };
    }
}
