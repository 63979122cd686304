package yardlight.demo.bench;

import yardlight.demo.bench.Load.Requests;

/** Requests that can be sent over and over, one for each connection with a box of its own. */
final class BenchEvents {

    private static final String EVENT = "{\"point\":\"%s\",\"condition\":\"high-high\",\"state\":\"%s\","
            + "\"value\":18.4,\"limit\":18.0,\"unit\":\"ft\",\"text\":\"float and transmitter agree\"}";

    private final byte[][] repeated;
    private final byte[][] refused;

    BenchEvents(BenchGateway gateway, int connections) {
        repeated = new byte[connections][];
        refused = new byte[connections][];
        for (int i = 0; i < connections; i++) {
            repeated[i] = request(gateway.key(i), "water-tank", "active");
            refused[i] = request(gateway.key(i), "water-tank", "neither");
        }
    }

    static byte[] request(String key, String point, String state) {
        return HttpConnection.post("/api/v1/events", key, String.format(EVENT, point, state));
    }

    /** The same alarm again and again: only the very first is new. */
    Requests repeated() {
        return (connection, number) -> repeated[connection];
    }

    /** As long as the others, read and checked like them, and then refused for one wrong word. */
    Requests refused() {
        return (connection, number) -> refused[connection];
    }
}
