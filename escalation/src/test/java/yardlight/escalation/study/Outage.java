package yardlight.escalation.study;

import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What really happened, in the time that is played: ms from its beginning, the quiet middle of a long outage left out.
 * Arrays are by the index of the world's feeds, links and boxes.
 *
 * @param feedsOff when each feed was off
 * @param linksDown when each link took nothing
 * @param radiosDown when each box could not be heard for a reason of its own
 * @param dead when each box did not run
 * @param drained how much of its battery each box had used when its mains came back or it died, 0 to 1
 * @param fading whether the signal fell before the radio was lost
 */
record Outage(
        World world,
        Cause cause,
        Span[] feedsOff,
        Span[] linksDown,
        Span[] radiosDown,
        Span[] dead,
        double[] drained,
        boolean fading) {

    /** When the first thing went wrong. */
    long start() {
        return spans().filter(Span::ever).mapToLong(Span::from).min().orElseThrow();
    }

    /** When the last thing was right again. */
    long end() {
        return spans().filter(Span::ever).mapToLong(Span::to).max().orElseThrow();
    }

    private Stream<Span> spans() {
        return Stream.of(feedsOff, linksDown, radiosDown, dead).flatMap(Stream::of);
    }

    boolean mainsOff(int box, long at) {
        return mains(box).covers(at);
    }

    boolean lostMains(int box) {
        return mains(box).ever();
    }

    Span mains(int box) {
        return feedsOff[world.boxes().get(box).feed()];
    }

    boolean runs(int box, long at) {
        return !dead[box].covers(at);
    }

    /** Whether what the box posts now can arrive. */
    boolean heard(int box, long at) {
        return !radiosDown[box].covers(at) && !linkOf(box).covers(at);
    }

    Span linkOf(int box) {
        return linksDown[world.boxes().get(box).link()];
    }

    boolean lostPath(int box) {
        return radiosDown[box].ever() || linkOf(box).ever();
    }

    /** When the box did not run or could not be heard. */
    Stream<Span> gone(int box) {
        return Stream.of(dead[box], radiosDown[box], linkOf(box)).filter(Span::ever);
    }

    /** The boxes that something happened to. */
    Set<Integer> victims() {
        return world.everyBox()
                .filter(box -> dead[box].ever() || lostPath(box) || lostMains(box))
                .boxed()
                .collect(Collectors.toSet());
    }

    /** A feed that was off, {@link World#NONE} when none was. */
    int someFeed() {
        return IntStream.range(0, feedsOff.length)
                .filter(feed -> feedsOff[feed].ever())
                .findFirst()
                .orElse(World.NONE);
    }

    static Span[] spans(int count, IntFunction<Span> each) {
        return IntStream.range(0, count).mapToObj(each).toArray(Span[]::new);
    }
}
