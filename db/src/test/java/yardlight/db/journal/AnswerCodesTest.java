package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;

class AnswerCodesTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");

    @Test
    void go_on_after_the_last_one() {
        var codes = new AnswerCodes(List.of(), 0, 46);

        assertThat(List.of(codes.next(), codes.next())).containsExactly(47, 48);
        assertThat(codes.last()).isEqualTo(48);
    }

    @Test
    void come_back_only_after_all_others() {
        var codes = new AnswerCodes(List.of(), 0, 9);
        int first = codes.next();
        codes.follow(ended(first));

        assertThat(IntStream.range(0, 989).map(i -> codes.next())).doesNotContain(first);
        assertThat(codes.next()).isEqualTo(first);
    }

    @Test
    void are_not_given_out_while_a_callout_has_them() {
        var codes = new AnswerCodes(List.of(), 0, 9);
        codes.follow(live(10));

        assertThat(codes.next()).isEqualTo(11);
    }

    @Test
    void get_longer_when_all_short_ones_are_taken_and_no_longer_one_comes_twice() {
        var codes = new AnswerCodes(IntStream.rangeClosed(10, 999).boxed().toList(), 999, 500);
        int longer = codes.next();
        codes.follow(ended(longer));

        assertThat(longer).isEqualTo(1000);
        assertThat(codes.next()).isEqualTo(1001);
    }

    @Test
    void are_short_again_as_soon_as_one_is_free() {
        var codes = new AnswerCodes(IntStream.rangeClosed(10, 999).boxed().toList(), 1200, 500);
        codes.follow(ended(77));

        assertThat(List.of(codes.next(), codes.next())).containsExactly(77, 1201);
    }

    private static Callout live(int code) {
        return new Callout.Calling(facts(code), Place.FOOT, NOW);
    }

    private static Callout ended(int code) {
        return new Callout.Exhausted(facts(code), Place.FOOT, NOW);
    }

    private static Callout.Facts facts(int code) {
        return new Callout.Facts(
                "c" + code, code, "mesa-9", "night", Priority.HIGH, List.of(), NOW, 0, 0, new TreeSet<>(), Map.of());
    }
}
