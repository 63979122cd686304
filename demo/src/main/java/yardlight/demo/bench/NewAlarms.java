package yardlight.demo.bench;

import java.util.concurrent.atomic.AtomicInteger;
import yardlight.demo.bench.Load.Requests;

/**
 * Alarms of which each is new: a callout is opened and somebody is told. No site gets so many that they become a flood,
 * so there are only so many of them.
 */
final class NewAlarms {

    /** With the site's water tank that repeats one fewer than the ten that make a flood. */
    static final int NO_FLOOD = 8;

    /** From the third text on within a while, a person gets what follows in one. */
    static final int NO_BUNDLE = 2;

    private final int sites;
    private final int each;
    private final AtomicInteger used = new AtomicInteger();

    NewAlarms(int sites, int each) {
        this.sites = sites;
        this.each = each;
    }

    int all() {
        return sites * each;
    }

    /** How many were asked for so far. */
    int used() {
        return used.get();
    }

    /** The next so many, whichever connection asks for them. */
    Requests next(int count) {
        int end = Math.min(all(), used.get() + count);
        return (connection, number) -> {
            int mine = used.getAndUpdate(before -> Math.min(end, before + 1));
            return mine >= end ? null : BenchEvents.event(mine % sites, "valve-" + mine / sites, "active");
        };
    }
}
