package yardlight.demo.boxes;

import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardlight.demo.gateway.BoxDoor;

/**
 * A field box. While its link is broken it keeps what it has to say, with the time, and posts it in one go once the
 * link is mended; a box without a battery is dead while the feed that it hangs on is off.
 */
public final class SimulatedBox {

    private static final double FULL_BATTERY = 13.1;
    private static final double GOOD_SIGNAL = -71;

    private final String id;
    private final boolean battery;
    private final InstantSource clock;
    private final Map<String, Boolean> feeds = new LinkedHashMap<>();
    private final List<Map<String, Object>> backlog = new ArrayList<>();
    private boolean linked = true;
    private BoxDoor door;

    /**
     * @param feeds the supplies that it watches; it hangs on the first
     * @param clock its own clock, which is right
     */
    SimulatedBox(String id, boolean battery, List<String> feeds, InstantSource clock) {
        this.id = id;
        this.battery = battery;
        this.clock = clock;
        feeds.forEach(feed -> this.feeds.put(feed, true));
    }

    public String id() {
        return id;
    }

    /** Gives it the way to the gateway; before that it says nothing. */
    public synchronized void connect(BoxDoor to) {
        door = to;
    }

    /** Posts an event, or keeps it; empty when it was kept or nobody is there to post it. */
    synchronized Optional<BoxDoor.Result> post(Map<String, Object> event) {
        if (!alive()) {
            return Optional.empty();
        }
        if (linked && backlog.isEmpty()) {
            try {
                return Optional.of(door.events(List.of(event)).get(0));
            } catch (UncheckedIOException e) {
                keep(event);
                return Optional.empty();
            }
        }
        keep(event);
        return Optional.empty();
    }

    private void keep(Map<String, Object> event) {
        Map<String, Object> dated = new LinkedHashMap<>(event);
        dated.put("at", clock.instant().toString());
        backlog.add(dated);
    }

    /** Gives a sign of life if it can, and with it whatever it has kept. */
    public synchronized Optional<BoxDoor.Beat> heartbeat() {
        if (!alive() || !linked) {
            return Optional.empty();
        }
        try {
            BoxDoor.Beat beat = door.heartbeat(condition());
            if (!backlog.isEmpty()) {
                door.events(List.copyOf(backlog));
                backlog.clear();
            }
            return Optional.of(beat);
        } catch (UncheckedIOException e) {
            return Optional.empty(); // it will try again with the next one
        }
    }

    private Map<String, Object> condition() {
        return Map.of("feeds", feeds, "battery", FULL_BATTERY, "signal", GOOD_SIGNAL);
    }

    private boolean alive() {
        return door != null && (battery || feeds.values().iterator().next());
    }

    /** Breaks the link or mends it; what was kept goes out at once. */
    synchronized void link(boolean up) {
        linked = up;
        if (up) {
            heartbeat();
        }
    }

    /** Switches a feed; a box that is alive says so at once. */
    synchronized void feed(String name, boolean on) {
        if (feeds.replace(name, on) == null) {
            throw new IllegalArgumentException("box " + id + " must watch the feed: " + name);
        }
        heartbeat();
    }

    public synchronized boolean linked() {
        return linked;
    }

    /** The feeds by name, its own first, and whether they are on. */
    public synchronized Map<String, Boolean> feeds() {
        return new LinkedHashMap<>(feeds);
    }

    public synchronized int kept() {
        return backlog.size();
    }
}
