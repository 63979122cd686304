package yardlight.escalation.study;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import yardlight.escalation.heartbeat.Heartbeat;

/** What the boxes post before, during and after an outage, and what of it arrives. */
final class Posts {

    /** When the playing begins, on everybody's clock that is right. */
    static final Instant BEGINNING = Instant.parse("2026-11-01T00:00:00Z");

    /** Heartbeats after the outage. */
    private static final int AFTER = 8;

    private static final long WRAP = 1L << 32;
    private static final long AT_ONCE = 2_000;
    private static final long JITTER = 1_000;

    /** Lead-acid of 12 V: on the charger, resting full, and empty. Common practice, no source. */
    private static final double CHARGING = 13.6;

    private static final double FULL = 12.7;
    private static final double EMPTY = 11.1;

    private static final double NOISE = 3;
    private static final double FADES_BY = 20;
    private static final int FADES_WITHIN = 6;

    private final World world;
    private final Outage outage;
    private final SplittableRandom random;
    private final long until;
    private final List<Post> arrived = new ArrayList<>();

    private Posts(World world, Outage outage, SplittableRandom random) {
        this.world = world;
        this.outage = outage;
        this.random = random;
        this.until = until(world, outage);
    }

    /** How long it is played. */
    static long until(World world, Outage outage) {
        return outage.end() + AFTER * world.every();
    }

    /** All that arrives, in that order. */
    static List<Post> of(World world, Outage outage, SplittableRandom random) {
        var posts = new Posts(world, outage, random);
        world.everyBox().forEach(posts::all);
        posts.arrived.sort(Comparator.comparingLong(Post::arrived));
        return posts.arrived;
    }

    private void all(int index) {
        FieldBox box = world.boxes().get(index);
        for (long at = box.phase(); at < until; at += world.every()) {
            post(index, at + random.nextLong(JITTER));
        }
        Span dead = outage.dead()[index];
        if (dead.ever()) {
            post(index, dead.to());
        }
        if (box.senses()) {
            atOnce(index, outage.mains(index));
        }
        if (box.watched() != World.NONE) {
            atOnce(index, outage.feedsOff()[box.watched()]);
        }
        if (box.gasps() && outage.lostMains(index)) {
            send(index, outage.mains(index).from());
        }
    }

    private void atOnce(int index, Span off) {
        if (off.ever()) {
            post(index, off.from() + AT_ONCE);
            post(index, off.to() + AT_ONCE);
        }
    }

    private void post(int index, long at) {
        long again = at + Math.round(1_000 * world.facts().of(Fact.RETRY_SECONDS));
        if (outage.runs(index, at) && !send(index, at) && outage.runs(index, again)) {
            send(index, again);
        }
    }

    /** Comes back with whether it got through. */
    private boolean send(int index, long at) {
        boolean lost = random.nextDouble() < world.boxes().get(index).loss();
        long arrives = at + world.facts().latency(random);
        double noise = NOISE * (2 * random.nextDouble() - 1);
        boolean through = !lost && outage.heard(index, at);
        if (through && arrives < until) {
            arrived.add(new Post(arrives, index, said(index, at, noise)));
        }
        return through;
    }

    private Heartbeat said(int index, long at, double noise) {
        FieldBox box = world.boxes().get(index);
        return new Heartbeat(
                box.tellsUptime() ? Optional.of(Duration.ofSeconds(uptime(index, at) / 1000)) : Optional.empty(),
                feeds(box, at),
                box.hasBattery() ? Optional.of(voltage(index, at)) : Optional.empty(),
                Optional.of(box.signal() + noise - fade(index, at)),
                Optional.of(BEGINNING.plusMillis(at + box.clock())));
    }

    private long uptime(int index, long at) {
        FieldBox box = world.boxes().get(index);
        Span dead = outage.dead()[index];
        boolean again = dead.ever() && at >= dead.to();
        long up = again ? at - dead.to() : at + box.started();
        return box.wraps() ? up % WRAP : up;
    }

    private Map<String, Boolean> feeds(FieldBox box, long at) {
        var feeds = new TreeMap<String, Boolean>();
        if (box.senses() || box.gasps()) {
            feeds.put(world.feeds().get(box.feed()), !outage.feedsOff()[box.feed()].covers(at));
        }
        if (box.watched() != World.NONE) {
            feeds.put(world.feeds().get(box.watched()), !outage.feedsOff()[box.watched()].covers(at));
        }
        return feeds;
    }

    private double voltage(int index, long at) {
        Span off = outage.mains(index);
        Span dead = outage.dead()[index];
        if (!off.covers(at)) {
            return CHARGING;
        }
        long end = dead.ever() ? dead.from() : off.to();
        double used = outage.drained()[index] * (at - off.from()) / Math.max(1, end - off.from());
        return FULL - (FULL - EMPTY) * Math.min(1, used);
    }

    private double fade(int index, long at) {
        Span lost = outage.radiosDown()[index];
        long within = FADES_WITHIN * world.every();
        boolean fades = outage.fading() && lost.ever() && at < lost.from() && at > lost.from() - within;
        return fades ? FADES_BY * (at - lost.from() + within) / within : 0;
    }
}
