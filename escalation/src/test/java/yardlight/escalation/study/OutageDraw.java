package yardlight.escalation.study;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Draws one outage at an operator: each kind as often as the world's numbers say, and what follows from it. */
final class OutageDraw {

    /** Heartbeats before the outage. */
    static final int BEFORE = 10;

    /** Heartbeats in which everything that follows from a change has happened. */
    private static final int SETTLED = 12;

    private final World world;
    private final Facts facts;
    private final SplittableRandom random;
    private final Span[] feeds;
    private final Span[] links;
    private final Span[] radios;
    private final Span[] dead;
    private final double[] drained;

    OutageDraw(World world, SplittableRandom random) {
        this.world = world;
        this.facts = world.facts();
        this.random = random;
        feeds = never(world.feeds().size());
        links = never(world.links().size());
        radios = never(world.boxes().size());
        dead = never(world.boxes().size());
        drained = new double[world.boxes().size()];
    }

    private static Span[] never(int count) {
        return Outage.spans(count, any -> Span.NEVER);
    }

    Outage draw() {
        Cause cause = cause();
        switch (cause) {
            case UTILITY -> feeds[one(world.toldFeeds())] = interruption(Fact.FEED_MINUTES, 0);
            case STORM -> storm();
            case LINK -> links[one(world.usedLinks())] = new Span(0, 1 + facts.length(Fact.LINK_MINUTES, random));
            case RADIO ->
                radios[random.nextInt(radios.length)] = new Span(0, 1 + facts.length(Fact.RADIO_MINUTES, random));
            case CRASH ->
                dead[random.nextInt(dead.length)] = new Span(0, boot() + facts.length(Fact.CRASH_MINUTES, random));
        }
        boolean fading = facts.chance(Fact.FADING, random);
        world.everyBox().forEach(this::follow);
        for (int link = 0; link < links.length; link++) {
            follow(link, world.links().get(link));
        }
        return played(cause, fading);
    }

    private int one(int[] among) {
        return among[random.nextInt(among.length)];
    }

    private Cause cause() {
        double[] often = {
            facts.of(Fact.FEED_OUTAGES) * world.toldFeeds().length,
            facts.of(Fact.STORM_OUTAGES) / facts.of(Fact.STORM_FEEDS),
            facts.of(Fact.LINK_OUTAGES) * world.usedLinks().length,
            facts.of(Fact.RADIO_FAULTS) * radios.length,
            facts.of(Fact.CRASHES) * dead.length
        };
        double lot = random.nextDouble() * Arrays.stream(often).sum();
        int cause = 0;
        while (lot >= often[cause] && cause < often.length - 1) {
            lot -= often[cause++];
        }
        return Cause.values()[cause];
    }

    private void storm() {
        do {
            for (int feed = 0; feed < feeds.length; feed++) {
                feeds[feed] = facts.chance(Fact.STORM_FEEDS, random) ? blow() : Span.NEVER;
            }
            for (int link = 0; link < links.length; link++) {
                links[link] = facts.chance(Fact.STORM_LINKS, random) ? blow() : Span.NEVER;
            }
        } while (Stream.of(feeds).noneMatch(Span::ever));
    }

    private Span blow() {
        long onset = Math.round(facts.of(Fact.STORM_ONSET_MINUTES) * 60_000);
        return interruption(Fact.STORM_MINUTES, random.nextLong(onset));
    }

    private Span interruption(Fact minutes, long from) {
        long shortest = Math.round(facts.of(Fact.SHORTEST_MINUTES) * 60_000);
        return new Span(from, from + Math.max(shortest, facts.length(minutes, random)));
    }

    private long boot() {
        return Math.round(facts.of(Fact.BOOT_SECONDS) * 1000);
    }

    /** A box dies when its battery is empty, and starts when its mains are back. */
    private void follow(int index) {
        FieldBox box = world.boxes().get(index);
        Span off = feeds[box.feed()];
        if (off.ever()) {
            boolean dies = off.length() > box.battery();
            drained[index] = box.battery() == 0 ? 1 : Math.min(1, (double) off.length() / box.battery());
            dead[index] = dies ? new Span(off.from() + box.battery(), off.to() + boot()) : Span.NEVER;
        }
    }

    private void follow(int index, World.Link link) {
        if (link.feed() != World.NONE) {
            Span off = feeds[link.feed()];
            Span down = links[index];
            if (off.length() > link.backup()) {
                long from = off.from() + link.backup();
                links[index] = down.ever()
                        ? new Span(Math.min(down.from(), from), Math.max(down.to(), off.to()))
                        : new Span(from, off.to());
            }
        }
    }

    private Outage played(Cause cause, boolean fading) {
        var changes = new TreeSet<Long>();
        Stream.of(feeds, links, radios, dead)
                .flatMap(Stream::of)
                .filter(Span::ever)
                .forEach(span -> changes.addAll(List.of(span.from(), span.to())));
        long start = BEFORE * world.every() + random.nextLong(world.every());
        var lapse = new Timelapse(changes, start, SETTLED * world.every());
        return new Outage(
                world,
                cause,
                played(lapse, feeds),
                played(lapse, links),
                played(lapse, radios),
                played(lapse, dead),
                drained,
                fading);
    }

    private static Span[] played(Timelapse lapse, Span[] spans) {
        return Stream.of(spans).map(lapse::played).toArray(Span[]::new);
    }
}
