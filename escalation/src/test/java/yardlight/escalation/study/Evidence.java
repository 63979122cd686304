package yardlight.escalation.study;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the world let the gateway see by the time of the first text, whatever anybody made of it. */
enum Evidence {
    /**
     * A feed that is off was told to be off; or two boxes without a battery on one feed fell silent while another box on
     * their link and on another feed lived on.
     */
    POWER,
    /**
     * Two boxes that share a link fell silent, not all on one feed, and nobody on the link is alive; or a box with a
     * battery whose last word was that its mains are on, and no other box on its link is alive.
     */
    COMMS,
    NONE;

    static Evidence at(Outage outage, List<Post> posts, long at) {
        var seen = new Seen(outage, posts, at);
        if (seen.toldOff() || seen.feedDied()) {
            return POWER;
        }
        return seen.linkDied() || seen.lastWordWasOn() ? COMMS : NONE;
    }

    /** The posts until some time, by box. */
    private static final class Seen {

        private final Outage outage;
        private final World world;
        private final long at;
        private final Post[] last;
        private final Set<Integer> silent;
        private final boolean told;

        Seen(Outage outage, List<Post> posts, long at) {
            this.outage = outage;
            this.at = at;
            world = outage.world();
            last = new Post[world.boxes().size()];
            boolean off = false;
            long start = outage.start();
            for (Post post : posts) {
                if (post.arrived() <= at) {
                    last[post.box()] = post;
                    off |= post.arrived() >= start && post.said().feeds().containsValue(false);
                }
            }
            told = off;
            silent = outage.victims().stream()
                    .filter(box -> last[box] != null && at - last[box].arrived() > world.every() * 3 / 2)
                    .collect(Collectors.toSet());
        }

        boolean toldOff() {
            return told;
        }

        boolean feedDied() {
            return silent.stream().anyMatch(one -> {
                FieldBox box = box(one);
                boolean second = silentBoxes()
                        .anyMatch(other -> other != box && other.feed() == box.feed() && !other.hasBattery());
                return !box.hasBattery()
                        && second
                        && world.onLink(box.link()).stream()
                                .anyMatch(other -> other.feed() != box.feed() && lives(other));
            });
        }

        boolean linkDied() {
            return silentBoxes()
                    .anyMatch(box -> nobodyLives(box)
                            && silentBoxes()
                                    .anyMatch(other -> other.link() == box.link() && other.feed() != box.feed()));
        }

        boolean lastWordWasOn() {
            return silent.stream().anyMatch(index -> {
                FieldBox box = box(index);
                Boolean on = last[index].said().feeds().get(world.feeds().get(box.feed()));
                return box.hasBattery() && Boolean.TRUE.equals(on) && nobodyLives(box);
            });
        }

        private boolean nobodyLives(FieldBox box) {
            return world.onLink(box.link()).stream().map(world::index).allMatch(silent::contains);
        }

        private boolean lives(FieldBox box) {
            int index = world.index(box);
            return outage.runs(index, at) && outage.heard(index, at);
        }

        private Stream<FieldBox> silentBoxes() {
            return silent.stream().map(this::box);
        }

        private FieldBox box(int index) {
            return world.boxes().get(index);
        }
    }
}
