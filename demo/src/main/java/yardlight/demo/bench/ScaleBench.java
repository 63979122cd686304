package yardlight.demo.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import yardlight.demo.bench.Load.Requests;

/**
 * What a repeat, a heartbeat, a new alarm and a callout that waits cost, in processor time of the gateway, with few boxes
 * and with many: so one sees whether the cost grows. Each path is warmed up for the same time at each size. Rows and bytes
 * come from {@link Keeping}.
 */
final class ScaleBench {

    private static final int CONNECTIONS = 16;
    private static final int MEASURED_ALARMS = 1_000;
    private static final Duration WARM = Duration.ofSeconds(10);
    private static final Duration ROUND = Duration.ofSeconds(6);
    private static final Duration IDLE = Duration.ofSeconds(10);
    private static final Duration AT_MOST = Duration.ofMinutes(5);

    /** What one size came to: microseconds of processor time, and what the armed callouts cost while nothing happens. */
    private record Costs(
            int boxes, double repeat, double heartbeat, double alarm, double idleCores, BenchHome.Contents kept) {

        int armed() {
            return boxes * NewAlarms.NO_BUNDLE;
        }
    }

    private final BenchGateway gateway;
    private final int boxes;
    private final Texts texts;

    private ScaleBench(BenchGateway gateway, int boxes, Texts texts) {
        this.gateway = gateway;
        this.boxes = boxes;
        this.texts = texts;
    }

    static List<Row> run(BenchSettings settings) throws Exception {
        List<Costs> all = new ArrayList<>();
        for (int boxes : settings.scale()) {
            Texts texts = new Texts();
            try (BenchGateway gateway = BenchGateway.open(settings.quick(), BenchSetup.of(boxes), texts::take)) {
                all.add(new ScaleBench(gateway, boxes, texts).costs());
            }
        }
        List<Row> rows = new ArrayList<>();
        all.forEach(costs -> rows.addAll(rows(costs, all.get(0))));
        rows.addAll(Keeping.run(settings));
        return rows;
    }

    private static List<Row> rows(Costs costs, Costs least) {
        String with = " with " + Figures.written(costs.boxes()) + " boxes";
        String few = "with " + Figures.written(least.boxes());
        double perMinute = costs.idleCores() * 60e6 / costs.armed();
        return List.of(
                Row.of("processor time of a repeat, µs" + with, costs.repeat(), few, least.repeat()),
                Row.of("processor time of a heartbeat, µs" + with, costs.heartbeat(), few, least.heartbeat()),
                Row.of("processor time of a new alarm and its text, µs" + with, costs.alarm(), few, least.alarm()),
                Row.of(
                        "processors kept busy by " + Figures.written(costs.armed()) + " callouts that wait",
                        costs.idleCores()),
                Row.of("the same for one callout, µs a minute", perMinute),
                Row.of("file" + with + ", MB, compacted", costs.kept().bytes() / 1_048_576.0),
                Row.of("rows" + with, costs.kept().allRows()));
    }

    private Costs costs() throws Exception {
        Requests repeats = BenchEvents.same("/api/v1/events", CONNECTIONS, "active");
        Requests heartbeats = BenchEvents.heartbeats(boxes);
        load(WARM, repeats);
        load(WARM, heartbeats);
        double repeat = micros(repeats);
        double heartbeat = micros(heartbeats);
        double alarm = alarms();
        Cpu.Meter meter = new Cpu.Meter(gateway.pid());
        LockSupport.parkNanos(IDLE.toNanos());
        double idle = meter.lap().cores();
        gateway.stop();
        return new Costs(boxes, repeat, heartbeat, alarm, idle, gateway.home().contents());
    }

    private double micros(Requests requests) throws Exception {
        Cpu.Meter meter = new Cpu.Meter(gateway.pid());
        int asked = load(ROUND, requests);
        return meter.lap().microsFor(asked);
    }

    private int load(Duration length, Requests requests) throws Exception {
        Load.Round round = new Load(gateway.port(), CONNECTIONS, length).run(requests);
        round.perSecond(202);
        return round.nanos().length;
    }

    /** Arms all there are and measures the last of them, from the post until its text is with the mail server. */
    private double alarms() throws Exception {
        NewAlarms alarms = new NewAlarms(boxes, NewAlarms.NO_BUNDLE);
        int measured = Math.min(MEASURED_ALARMS, alarms.all() / 2);
        int before = texts.taken();
        load(AT_MOST, alarms.next(alarms.all() - measured));
        texts.await(before + alarms.all() - measured, AT_MOST);
        Cpu.Meter meter = new Cpu.Meter(gateway.pid());
        load(AT_MOST, alarms.next(measured));
        texts.await(before + alarms.all(), AT_MOST);
        return meter.lap().microsFor(measured);
    }
}
