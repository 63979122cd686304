package yardlight.demo.bench;

import java.util.concurrent.atomic.AtomicInteger;
import yardlight.demo.bench.Load.Requests;

/** Posts of boxes as bytes, made beforehand where they are sent over and over. */
final class BenchEvents {

    private static final String EVENT = "{\"point\":\"%s\",\"condition\":\"high-high\",\"state\":\"%s\","
            + "\"value\":18.4,\"limit\":18.0,\"unit\":\"ft\",\"text\":\"float and transmitter agree\"}";
    private static final String BEAT = "{\"uptime\":86400,\"feeds\":{\"wells\":true},\"battery\":12.6,\"signal\":-87}";

    private BenchEvents() {}

    /** An event of a box, as all measurements have it. */
    static byte[] event(int box, String point, String state) {
        return event("/api/v1/events", box, point, state);
    }

    static byte[] event(String path, int box, String point, String state) {
        return HttpConnection.post(path, BenchHome.key(box), EVENT.formatted(point, state));
    }

    /** As many alarms of one box in one post; more than nine within ten minutes would be a flood. */
    static byte[] several(int box, int alarms) {
        StringBuilder array = new StringBuilder("[");
        for (int i = 0; i < alarms; i++) {
            array.append(i == 0 ? "" : ",").append(EVENT.formatted("valve-" + i, "active"));
        }
        return HttpConnection.post(
                "/api/v1/events", BenchHome.key(box), array.append(']').toString());
    }

    static byte[] heartbeat(int box) {
        return HttpConnection.post("/api/v1/heartbeats", BenchHome.key(box), BEAT);
    }

    /** One and the same event over and over, each connection for a box of its own: only the very first is new. */
    static Requests same(String path, int connections, String state) {
        byte[][] requests = new byte[connections][];
        for (int i = 0; i < connections; i++) {
            requests[i] = event(path, i, "water-tank", state);
        }
        return (connection, number) -> requests[connection];
    }

    /** Heartbeats of all boxes in turn. */
    static Requests heartbeats(int boxes) {
        AtomicInteger next = new AtomicInteger();
        return (connection, number) -> heartbeat(next.getAndIncrement() % boxes);
    }
}
