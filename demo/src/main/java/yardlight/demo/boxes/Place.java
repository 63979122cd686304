package yardlight.demo.boxes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import yardlight.demo.gateway.BoxDoor;

/** One of the operator's sites: what can be seen and switched there. */
public final class Place {

    /**
     * What stands at its gate.
     *
     * @param character one sentence about it
     */
    public record Sign(String id, String name, String character) {}

    private final Sign sign;
    private final List<Gauge> gauges;
    private final SimulatedBox box;
    private final Set<String> beyond = ConcurrentHashMap.newKeySet();

    Place(Sign sign, List<Gauge> gauges, SimulatedBox box) {
        this.sign = sign;
        this.gauges = List.copyOf(gauges);
        this.box = box;
    }

    public String id() {
        return sign.id();
    }

    public String name() {
        return sign.name();
    }

    public String character() {
        return sign.character();
    }

    public List<Gauge> gauges() {
        return gauges;
    }

    public SimulatedBox box() {
        return box;
    }

    public boolean beyond(String point) {
        return beyond.contains(point);
    }

    /**
     * Moves a gauge beyond its limit or back; the box posts it.
     *
     * @return what the gateway made of it; empty when it did not get there yet
     * @throws IllegalArgumentException if there is no such gauge
     */
    public Optional<BoxDoor.Result> move(String point, boolean goesBeyond) {
        Gauge gauge = gauge(point);
        if (goesBeyond) {
            beyond.add(point);
        } else {
            beyond.remove(point);
        }
        return box.post(gauge.event(goesBeyond));
    }

    /** Cuts a feed or restores it. */
    public void feed(String feed, boolean on) {
        box.feed(feed, on);
    }

    /** Breaks the box's link or mends it. */
    public void link(boolean up) {
        box.link(up);
    }

    /**
     * @throws IllegalArgumentException if there is no such gauge
     */
    public Gauge gauge(String point) {
        return gauges.stream()
                .filter(one -> one.point().equals(point))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(id() + " must have the point: " + point));
    }
}
