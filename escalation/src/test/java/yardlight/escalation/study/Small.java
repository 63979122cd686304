package yardlight.escalation.study;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Setup;

/** Two feeds, two links and four boxes that are easy to think about: 0 and 1 share feed and link, 2 only the link, 3 nothing. */
final class Small {

    static final long EVERY = 60_000;
    static final World WORLD = new World(
            Facts.AS_CHOSEN,
            List.of(
                    box("a", 0, 0, 0),
                    box("b", 0, 0, 0),
                    box("c", 1, 0, Duration.ofHours(8).toMillis()),
                    box("d", 2, 1, 0)),
            List.of(new World.Link("hub", World.NONE, 0), new World.Link("own", World.NONE, 0)),
            List.of("mains-0", "mains-1", "mains-2"),
            EVERY,
            3 * EVERY,
            Setup.EMPTY);

    private Small() {}

    private static FieldBox box(String id, int feed, int link, long battery) {
        boolean has = battery > 0;
        return new FieldBox(
                id,
                "site-" + id,
                feed,
                link,
                World.NONE,
                battery,
                has,
                has,
                false,
                0,
                1_000_000,
                0,
                false,
                true,
                1_000,
                -80);
    }

    /** Only this link was down, or none. */
    static Outage linkDown(int link, Span down) {
        Outage none = none();
        none.linksDown()[link] = down;
        return none;
    }

    static Outage radioDown(int box, Span down) {
        Outage none = none();
        none.radiosDown()[box] = down;
        return none;
    }

    static Outage feedOff(int feed, Span off) {
        Outage none = none();
        none.feedsOff()[feed] = off;
        WORLD.everyBox()
                .filter(box -> WORLD.boxes().get(box).feed() == feed)
                .filter(box -> WORLD.boxes().get(box).battery() < off.length())
                .forEach(box -> none.dead()[box] = off);
        return none;
    }

    static Outage crashed(int box, Span dead) {
        Outage none = none();
        none.dead()[box] = dead;
        return none;
    }

    private static Outage none() {
        return new Outage(WORLD, Cause.LINK, never(3), never(2), never(4), never(4), new double[4], false);
    }

    private static Span[] never(int count) {
        return Outage.spans(count, any -> Span.NEVER);
    }

    /** A post that says nothing. */
    static Post post(int box, long at) {
        return new Post(at, box, Heartbeat.BARE);
    }

    static Post post(int box, long at, String feed, boolean on) {
        return new Post(
                at,
                box,
                new Heartbeat(
                        Optional.empty(), Map.of(feed, on), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    static List<Post> inOrder(Post... posts) {
        return Stream.of(posts)
                .sorted(java.util.Comparator.comparingLong(Post::arrived))
                .toList();
    }
}
