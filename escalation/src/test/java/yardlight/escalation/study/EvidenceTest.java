package yardlight.escalation.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What could be seen at the first text: the outage began at 10 min, the first text is at 13. */
class EvidenceTest {

    private static final Span SPAN = new Span(600_000, 1_800_000);
    private static final long BEFORE = 590_000;
    private static final long ALIVE = 770_000;
    private static final long TEXT = 780_000;

    @Test
    void a_feed_that_was_told_to_be_off_is_power() {
        Outage outage = Small.feedOff(1, SPAN);
        Post told = Small.post(2, 601_000, "mains-1", false);

        assertThat(at(outage, all(BEFORE, BEFORE, 601_000, told))).isEqualTo(Evidence.POWER);
    }

    @Test
    void two_on_one_feed_that_fall_silent_while_their_link_lives_are_power() {
        assertThat(at(Small.feedOff(0, SPAN), all(BEFORE, BEFORE, ALIVE))).isEqualTo(Evidence.POWER);
    }

    @Test
    void everybody_on_a_link_and_two_feeds_is_the_path() {
        assertThat(at(Small.linkDown(0, SPAN), all(BEFORE, BEFORE, BEFORE))).isEqualTo(Evidence.COMMS);
    }

    @Test
    void one_alone_without_a_battery_is_nothing() {
        assertThat(at(Small.radioDown(0, SPAN), all(BEFORE, ALIVE, ALIVE))).isEqualTo(Evidence.NONE);
    }

    @Test
    void one_with_a_battery_whose_mains_were_on_is_the_path_only_if_nobody_lives_on_its_link() {
        Post on = Small.post(2, BEFORE, "mains-1", true);

        assertThat(at(Small.radioDown(2, SPAN), all(ALIVE, ALIVE, BEFORE, on))).isEqualTo(Evidence.NONE);
        assertThat(at(Small.linkDown(0, SPAN), all(BEFORE, BEFORE, BEFORE, on))).isEqualTo(Evidence.COMMS);
    }

    @Test
    void what_arrives_after_the_text_was_not_seen() {
        Outage outage = Small.feedOff(1, SPAN);
        Post told = Small.post(2, TEXT + 1, "mains-1", false);

        assertThat(at(outage, all(ALIVE, ALIVE, BEFORE, told))).isEqualTo(Evidence.NONE);
    }

    private static Evidence at(Outage outage, Post[] posts) {
        return Evidence.at(outage, Small.inOrder(posts), TEXT);
    }

    /** When each of the first three boxes was heard last, and what else was said; the fourth lives. */
    private static Post[] all(long first, long second, long third, Post... more) {
        var posts = new Post[4 + more.length];
        posts[0] = Small.post(0, first);
        posts[1] = Small.post(1, second);
        posts[2] = Small.post(2, third);
        posts[3] = Small.post(3, ALIVE);
        System.arraycopy(more, 0, posts, 4, more.length);
        return posts;
    }
}
