package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The usual finding criteria of ISA-18.2 (monitoring and assessment), read at second hand. */
class NuisanceAgainstTest {

    private static final Nuisance.Numbers USUAL = Nuisance.Numbers.USUAL;

    /** "3 or more activations within 1 minute"; the trace is derived from the rule and recomputed. */
    @Test
    void three_activations_within_a_minute_chatter_with_both_ends_of_the_minute_included() {
        assertThat(chattering(0, 30, 60)).isTrue();
        assertThat(chattering(0, 30, 61)).isFalse();
    }

    /** Same source: chattering from the third activation on and not before. */
    @Test
    void chatter_is_found_at_the_third_activation() {
        assertThat(chattering(0, 10)).isFalse();
        assertThat(chattering(0, 10, 20)).isTrue();
    }

    /** "Continuously active > 24 h = 1440 min", read (2nd). */
    @Test
    void an_alarm_is_stale_after_more_than_a_day_and_not_at_a_day() {
        assertThat(Nuisance.stale(second(0), second(1440 * 60), USUAL)).isFalse();
        assertThat(Nuisance.stale(second(0), second(1440 * 60 + 1), USUAL)).isTrue();
    }

    /** The whole way through the rules: the third activation is the one from which on the alarm has to settle. */
    @Test
    void an_alarm_that_chatters_by_the_rule_does_not_return_at_once() {
        assertThat(returnsAtOnce(0, 30, 60)).isFalse();
        assertThat(returnsAtOnce(0, 30, 61)).isTrue();
    }

    private static boolean returnsAtOnce(long first, long second, long third) {
        var tank = new OneAlarm(Timing.PLAIN);
        for (long at : new long[] {first, second, third}) {
            tank.active(at);
            tank.normal(at + 1);
        }
        return !tank.alarm().active();
    }

    private static boolean chattering(long... seconds) {
        return Nuisance.chattering(
                LongStream.of(seconds).mapToObj(OneAlarm::second).toList(), USUAL);
    }
}
