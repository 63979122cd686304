package yardlight.escalation.study;

import java.util.List;
import java.util.stream.IntStream;
import yardlight.escalation.setup.Setup;

/**
 * A small operator.
 *
 * @param feeds names of the feeds; a name that two sites have is one feed
 * @param every interval of the heartbeats, in ms
 * @param patience how long a box may be silent, in ms
 */
record World(
        Facts facts,
        List<FieldBox> boxes,
        List<Link> links,
        List<String> feeds,
        long every,
        long patience,
        Setup setup) {

    static final int NONE = -1;

    /**
     * A path to the outside.
     *
     * @param feed index of the feed that it hangs on, {@link #NONE} when that is not one of the operator's
     * @param backup for how long it lives without its feed, in ms
     */
    record Link(String name, int feed, long backup) {}

    List<FieldBox> onFeed(int feed) {
        return boxes.stream().filter(box -> box.feed() == feed).toList();
    }

    List<FieldBox> onLink(int link) {
        return boxes.stream().filter(box -> box.link() == link).toList();
    }

    /** The feeds that a box hangs on or tells of. */
    int[] toldFeeds() {
        return IntStream.range(0, feeds.size())
                .filter(feed -> boxes.stream().anyMatch(box -> box.feed() == feed || box.watched() == feed))
                .toArray();
    }

    /** The links that a box talks over. */
    int[] usedLinks() {
        return IntStream.range(0, links.size())
                .filter(link -> boxes.stream().anyMatch(box -> box.link() == link))
                .toArray();
    }

    int index(FieldBox box) {
        return boxes.indexOf(box);
    }

    int feed(String name) {
        return feeds.indexOf(name);
    }

    IntStream everyBox() {
        return IntStream.range(0, boxes.size());
    }
}
