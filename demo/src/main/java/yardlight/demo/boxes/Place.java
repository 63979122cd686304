package yardlight.demo.boxes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import yardlight.demo.gateway.BoxDoor;

/** One of the operator's sites: what can be seen and switched there. */
public final class Place {

    private final String id;
    private final String name;
    private final String character;
    private final List<Gauge> gauges;
    private final SimulatedBox box;
    private final Set<String> beyond = ConcurrentHashMap.newKeySet();

    /**
     * @param character one sentence about it for the page
     */
    Place(String id, String name, String character, List<Gauge> gauges, SimulatedBox box) {
        this.id = id;
        this.name = name;
        this.character = character;
        this.gauges = List.copyOf(gauges);
        this.box = box;
    }

    public String id() {
        return id;
    }

    public String name() {
        return name;
    }

    public String character() {
        return character;
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
                .orElseThrow(() -> new IllegalArgumentException(id + " must have the point: " + point));
    }
}
