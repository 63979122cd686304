package yardlight.demo.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import yardlight.demo.bench.BenchHome.Contents;
import yardlight.demo.bench.Load.Requests;

/**
 * Rows and bytes of a repeat, a heartbeat and a new alarm: as many of one kind as there is room for, then the gateway is
 * stopped, its rows counted and its file compacted; the difference to before, divided.
 */
final class Keeping {

    private static final int SITES = 2_000;
    private static final int CONNECTIONS = 16;
    private static final Duration AT_MOST = Duration.ofMinutes(5);

    private Keeping() {}

    static List<Row> run(BenchSettings settings) throws Exception {
        Texts texts = new Texts();
        try (BenchGateway gateway = BenchGateway.prepare(settings.quick(), BenchSetup.of(SITES), texts::take)) {
            int count = SITES * NewAlarms.NO_BUNDLE;
            Contents empty = gateway.home().contents();
            Contents heard = after(gateway, 0, texts, only(count, BenchEvents.heartbeats(SITES)));
            Contents alarmed = after(gateway, count, texts, new NewAlarms(SITES, NewAlarms.NO_BUNDLE).next(count));
            Contents repeated = after(
                    gateway,
                    0,
                    texts,
                    only(count, (connection, number) -> BenchEvents.event(connection, "valve-0", "active")));
            List<Row> rows = new ArrayList<>();
            rows.addAll(rows("heartbeat, the first of a box", empty, heard, SITES));
            rows.addAll(rows("new alarm", heard, alarmed, count));
            rows.addAll(rows("repeat", alarmed, repeated, count));
            return rows;
        }
    }

    private static Contents after(BenchGateway gateway, int newTexts, Texts texts, Requests requests) throws Exception {
        int before = texts.taken();
        gateway.start();
        new Load(gateway.port(), CONNECTIONS, AT_MOST).run(requests).perSecond(202);
        texts.await(before + newTexts, AT_MOST);
        gateway.stop();
        return gateway.home().contents();
    }

    private static Requests only(int count, Requests requests) {
        int each = count / CONNECTIONS;
        return (connection, number) -> number < each ? requests.next(connection, number) : null;
    }

    private static List<Row> rows(String what, Contents before, Contents after, int count) {
        TreeMap<String, Long> more = new TreeMap<>();
        after.rows().forEach((table, rows) -> {
            if (rows > before.rows().get(table)) {
                more.put(
                        table.toLowerCase(java.util.Locale.ROOT),
                        rows - before.rows().get(table));
            }
        });
        System.err.println(what + " x " + count + ": " + more);
        return List.of(
                Row.of("rows of a " + what, (double) (after.allRows() - before.allRows()) / count),
                Row.of("bytes of a " + what, (double) (after.bytes() - before.bytes()) / count));
    }
}
