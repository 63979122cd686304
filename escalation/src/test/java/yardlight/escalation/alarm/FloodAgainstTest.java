package yardlight.escalation.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.alarm.OneAlarm.second;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * ISA-18.2's flood: begins when the rate passes ten in ten minutes, ends below five in ten minutes. Read at second hand,
 * where both "10 or more" and "more than 10" are quoted, so the number is a parameter. The traces are derived from that
 * rule with a sliding window {@code (t - 600 s, t]} and were recomputed.
 */
class FloodAgainstTest {

    private static final Flood.Numbers TEN_OR_MORE = Flood.Numbers.USUAL;
    private static final Flood.Numbers MORE_THAN_TEN = new Flood.Numbers(11, 5, Duration.ofMinutes(10));

    /** A flood in seconds, end exclusive. */
    private record Span(long begins, long ends) {}

    @Test
    void ten_alarms_a_minute_apart_flood_under_ten_or_more_only() {
        long[] ten = every(60, 10);

        assertThat(floods(TEN_OR_MORE, ten)).containsExactly(new Span(540, 900));
        assertThat(floods(MORE_THAN_TEN, ten)).isEmpty();
    }

    /** At 600 s the alarm at 0 has just left the half-open window, so there are never eleven. */
    @Test
    void an_eleventh_alarm_makes_the_flood_longer_and_no_second_reading_true() {
        long[] eleven = every(60, 11);

        assertThat(floods(TEN_OR_MORE, eleven)).containsExactly(new Span(540, 960));
        assertThat(floods(MORE_THAN_TEN, eleven)).isEmpty();
    }

    @Test
    void twenty_alarms_every_thirty_seconds_flood_under_both_readings() {
        long[] twenty = every(30, 20);

        assertThat(floods(TEN_OR_MORE, twenty)).containsExactly(new Span(270, 1050));
        assertThat(floods(MORE_THAN_TEN, twenty)).containsExactly(new Span(300, 1050));
    }

    /** Bins of ten minutes from 0 on hold five and five of these and see nothing. */
    @Test
    void a_flood_across_the_border_of_fixed_bins_is_seen() {
        long[] straddling =
                LongStream.iterate(300, at -> at <= 840, at -> at + 60).toArray();

        assertThat(Arrays.stream(straddling).filter(at -> at < 600)).hasSize(5);
        assertThat(Arrays.stream(straddling).filter(at -> at >= 600)).hasSize(5);
        assertThat(floods(TEN_OR_MORE, straddling))
                .first()
                .extracting(Span::begins)
                .isEqualTo(840L);
    }

    private static long[] every(long seconds, int count) {
        return LongStream.range(0, count).map(i -> i * seconds).toArray();
    }

    /** Looks every second for half an hour. */
    private static List<Span> floods(Flood.Numbers numbers, long... alarms) {
        var spans = new ArrayList<Span>();
        Flood flood = Flood.NONE;
        long begun = -1;
        for (long now = 0; now <= 1800; now++) {
            for (long at : alarms) {
                flood = at == now ? flood.plus(second(now), numbers) : flood;
            }
            flood = flood.at(second(now), numbers);
            if (flood.on() && begun < 0) {
                begun = now;
            }
            if (!flood.on() && begun >= 0) {
                spans.add(new Span(begun, now));
                begun = -1;
            }
        }
        return spans;
    }
}
