package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The world is as its numbers say. */
class GeneratorTest {

    private static final Span SPAN = new Span(600_000, 3_000_000);

    /** The same once what was on its way has arrived. */
    private static final Span GONE = new Span(660_000, 3_000_000);

    @Test
    void interruptions_last_as_long_as_published() {
        var random = new SplittableRandom(1);
        double mean = LongStream.range(0, 200_000)
                .map(any -> Facts.AS_CHOSEN.length(Fact.FEED_MINUTES, random))
                .average()
                .orElseThrow();

        assertThat(mean / 60_000).isCloseTo(Fact.FEED_MINUTES.value, Percentage.withPercentage(2));
    }

    @Test
    void every_cause_comes_up_and_every_outage_ends() {
        List<Outage> outages =
                IntStream.range(0, 500).mapToObj(GeneratorTest::outage).toList();

        assertThat(outages).extracting(Outage::cause).containsAll(EnumSet.allOf(Cause.class));
        assertThat(outages).allSatisfy(outage -> {
            assertThat(outage.start())
                    .isGreaterThanOrEqualTo(OutageDraw.BEFORE * outage.world().every());
            assertThat(outage.end()).isGreaterThan(outage.start());
        });
    }

    @Test
    void nothing_arrives_of_a_box_that_is_dead_and_its_uptime_starts_anew() {
        List<Post> posts = posts(Small.feedOff(0, SPAN));

        assertThat(posts).filteredOn(post -> post.box() == 0).noneMatch(post -> GONE.covers(post.arrived()));
        long up = (lastOf(posts, 0) - SPAN.to()) / 1_000;
        assertThat(uptimes(posts, 0).get(uptimes(posts, 0).size() - 1)).isBetween(up - 60, up);
    }

    @Test
    void nothing_arrives_over_a_lost_link_and_uptimes_run_through() {
        List<Post> posts = posts(Small.linkDown(0, SPAN));

        assertThat(posts).filteredOn(post -> post.box() == 2).noneMatch(post -> GONE.covers(post.arrived()));
        assertThat(uptimes(posts, 2)).isSorted();
    }

    @Test
    void a_battery_tells_at_once_that_its_mains_are_off_and_runs_down() {
        List<Post> posts = posts(Small.feedOff(1, SPAN));
        Post first = posts.stream()
                .filter(post -> post.said().feeds().containsValue(false))
                .findFirst()
                .orElseThrow();

        assertThat(first.box()).isEqualTo(2);
        assertThat(first.arrived() - SPAN.from()).isBetween(2_000L, 60_000L);
        assertThat(first.said().battery().orElseThrow()).isLessThan(13);
    }

    private static Outage outage(int seed) {
        var random = new SplittableRandom(seed);
        return new OutageDraw(new WorldDraw(Facts.AS_CHOSEN, random).draw(), random).draw();
    }

    private static List<Post> posts(Outage outage) {
        return Posts.of(Small.WORLD, outage, new SplittableRandom(7));
    }

    private static List<Long> uptimes(List<Post> posts, int box) {
        return posts.stream()
                .filter(post -> post.box() == box)
                .map(post -> post.said().uptime().orElseThrow().toSeconds())
                .toList();
    }

    private static long lastOf(List<Post> posts, int box) {
        return posts.stream()
                .filter(post -> post.box() == box)
                .mapToLong(Post::arrived)
                .max()
                .orElseThrow();
    }
}
