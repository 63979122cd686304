package yardlight.escalation.study;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardlight.escalation.heartbeat.Verdict;

/** Compares what was said of an outage with what was so. */
final class Marker {

    private final Outage outage;
    private final List<Post> posts;
    private final long until;

    Marker(Outage outage, List<Post> posts, long until) {
        this.outage = outage;
        this.posts = posts;
        this.until = until;
    }

    /** The time in which boxes ran and could be heard, all boxes together. */
    long quiet() {
        int boxes = outage.world().boxes().size();
        long gone = outage.world()
                .everyBox()
                .mapToLong(box -> outage.gone(box).mapToLong(Span::length).max().orElse(0))
                .sum();
        return boxes * until - gone;
    }

    Mark mark(Rules.Read read) {
        List<Told> ours = read.texts().stream().filter(this::caused).toList();
        Optional<Told> first =
                ours.stream().min(Comparator.comparingLong(Told::at).thenComparing(Told::text));
        Truth truth = first.map(told -> Truth.of(outage, told.boxes(), told.feed(), told.at()))
                .orElseGet(() -> Truth.of(outage, outage.victims(), outage.someFeed(), until));
        Optional<Rules.Last> worst = worst(read.last());
        Optional<Verdict> said = first.map(Told::verdict);
        return new Mark(
                truth,
                first.map(told -> Evidence.at(outage, posts, told.at())).orElse(Evidence.NONE),
                said,
                worst.map(Rules.Last::verdict).or(() -> said).orElse(Verdict.SILENT),
                worst.map(this::truth).orElse(truth),
                worst.filter(Rules.Last::reboot).isPresent(),
                texts(ours),
                first.map(Told::at).orElse(until) - outage.start(),
                texts(read.texts()) - texts(ours));
    }

    private static int texts(List<Told> told) {
        return told.stream()
                .map(Told::text)
                .collect(Collectors.toCollection(HashSet::new))
                .size();
    }

    /** Whether the outage is behind a text: it says that a feed is off that was, or names a box that was gone. */
    private boolean caused(Told told) {
        boolean feed = told.feed() != World.NONE && outage.feedsOff()[told.feed()].ever();
        return feed && told.at() >= outage.start() || anyGone(told.boxes(), told.at(), told.at());
    }

    /** The worst of what the record says of the outage; empty when no silence came of it. */
    private Optional<Rules.Last> worst(List<Rules.Last> all) {
        return all.stream()
                .filter(last -> anyGone(last.boxes(), last.from(), last.to()))
                .max(Comparator.comparingInt(this::badness));
    }

    /** Whether one of the boxes was gone between the post before it was missed, and when it was back. */
    private boolean anyGone(Set<Integer> boxes, long missed, long back) {
        return boxes.stream().anyMatch(box -> {
            var unheard = new Span(heard(box, missed), back + 1);
            return outage.gone(box).anyMatch(unheard::meets);
        });
    }

    /** When the box had been heard last. */
    private long heard(int box, long at) {
        return posts.stream()
                .filter(post -> post.box() == box && post.arrived() < at)
                .mapToLong(Post::arrived)
                .max()
                .orElse(0);
    }

    private int badness(Rules.Last last) {
        if (truth(last).wrong(last.verdict())) {
            return 2;
        }
        return truth(last).right.contains(last.verdict()) ? 0 : 1;
    }

    private Truth truth(Rules.Last last) {
        return Truth.of(outage, last.boxes(), World.NONE, until);
    }
}
