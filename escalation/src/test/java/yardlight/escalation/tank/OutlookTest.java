package yardlight.escalation.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import yardlight.escalation.trend.Trend;

class OutlookTest {

    private static final Tank TANK = new Rectangular(10, 10, 20);
    private static final OptionalDouble NOTHING_KNOWN = OptionalDouble.empty();

    /** 112.5 minutes. */
    private static final Response RESPONSE = Response.USUAL;

    @Test
    void works_back_from_the_brim_by_the_time_that_people_need() {
        assertThat(RESPONSE.needed()).isEqualTo(Duration.ofSeconds(6_750));
        assertThat(RESPONSE.workedBack(2_000, 100)).isCloseTo(2_000 - 187.5, within(1e-9));
        assertThat(RESPONSE.workedBack(100, 1_000)).isZero();
    }

    /**
     * A published course example, read at second hand and recomputed: 60 cubic metres an hour into 20 square metres, 12 minutes
     * times 1.5, overflow at 9.5 m: the alarm stands at 8.6 m.
     */
    @Test
    void works_back_as_the_published_example_does() {
        var tank = new Rectangular(5, 4, 9.5);
        var response = new Response(Duration.ofMinutes(10), Duration.ZERO, Duration.ofMinutes(2), 1.5);

        assertThat(tank.height(response.workedBack(tank.capacity(), 60))).isCloseTo(8.6, within(1e-9));
    }

    @Test
    void a_fast_rise_is_called_long_before_a_slow_one() {
        assertThat(rising(1_000, 400).tooShort(RESPONSE, false)).isFalse();
        assertThat(rising(1_300, 400).tooShort(RESPONSE, false)).isTrue();
        assertThat(rising(1_900, 20).tooShort(RESPONSE, false)).isFalse();
        assertThat(rising(1_975, 20).tooShort(RESPONSE, false)).isTrue();
    }

    @Test
    void the_worst_rate_of_the_week_counts_although_it_rises_slowly_now() {
        Outlook slow = Outlook.of(TANK, 1_800, Optional.of(trend(1_800, 5)), OptionalDouble.of(120));

        assertThat(slow.worst()).contains(Duration.ofMinutes(100));
        assertThat(slow.tooShort(RESPONSE, false)).isTrue();
        assertThat(slow.expected().orElseThrow()).isCloseTo(Duration.ofHours(40), Duration.ofMinutes(1));
    }

    /** As after a truck has drawn a tank down: the same rate as ever, of which the newest readings say little. */
    @Test
    void a_rate_that_may_as_well_be_none_calls_nobody_however_wide_its_interval_is() {
        Trend uncertain = new Trend(Instant.EPOCH, 500, 20, 600, 1, 0, Duration.ofHours(1), 60);
        Outlook outlook = Outlook.of(TANK, 500, Optional.of(uncertain), OptionalDouble.of(20));

        assertThat(outlook.present().orElseThrow().earliest()).isLessThan(RESPONSE.needed());
        assertThat(outlook.tooShort(RESPONSE, false)).isFalse();
    }

    @Test
    void a_rise_that_is_not_sure_counts_by_its_likely_time() {
        Trend likely = new Trend(Instant.EPOCH, 1_900, 80, 60, 1, 0, Duration.ofHours(1), 60);
        Outlook outlook = Outlook.of(TANK, 1_900, Optional.of(likely), NOTHING_KNOWN);

        assertThat(outlook.present().orElseThrow().latest()).isEmpty();
        assertThat(outlook.least()).isCloseTo(Duration.ofMinutes(75), Duration.ofSeconds(1));
        assertThat(outlook.tooShort(RESPONSE, false)).isTrue();
    }

    @Test
    void a_level_that_falls_calls_nobody() {
        Outlook falls = Outlook.of(TANK, 1_950, Optional.of(trend(1_950, -100)), OptionalDouble.of(120));

        assertThat(falls.tooShort(RESPONSE, false)).isFalse();
        assertThat(falls.expected()).isEmpty();
    }

    @Test
    void once_called_it_is_over_only_when_a_quarter_more_time_is_left_by_the_worst_rate() {
        Outlook falls = Outlook.of(TANK, 1_780, Optional.of(trend(1_780, -100)), OptionalDouble.of(100));
        Outlook lower = Outlook.of(TANK, 1_760, Optional.of(trend(1_760, -100)), OptionalDouble.of(100));

        assertThat(falls.tooShort(RESPONSE, true)).isTrue();
        assertThat(lower.tooShort(RESPONSE, true)).isFalse();
    }

    @Test
    void while_nothing_is_known_of_the_rate_nothing_is_said() {
        Outlook unknown = Outlook.of(TANK, 1_990, Optional.empty(), NOTHING_KNOWN);

        assertThat(unknown.tooShort(RESPONSE, false)).isFalse();
        assertThat(unknown.expected()).isEmpty();
    }

    @Test
    void a_response_that_takes_no_time_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Response(Duration.ZERO, Duration.ZERO, Duration.ZERO, 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Response(Duration.ofMinutes(1), Duration.ZERO, Duration.ZERO, 0.9))
                .withMessage("margin must lie between 1 and 10.0: 0.9");
    }

    @Test
    void a_filling_counts_when_it_is_over_unless_people_were_called_for_it() {
        LocalDate monday = LocalDate.parse("2026-11-23");
        Inflow filling = Inflow.UNKNOWN.filling(monday, 10).filling(monday, 8);

        assertThat(filling.worst(monday)).isEmpty();
        assertThat(filling.over().worst(monday)).hasValue(10);
        assertThat(filling.forgotten().over().worst(monday)).isEmpty();
        assertThat(filling.filling(monday.plusDays(1), 3).worst(monday)).hasValue(10);
        assertThat(Inflow.of(filling.over().filling(monday, 4).numbers()))
                .isEqualTo(filling.over().filling(monday, 4));
        assertThat(Inflow.of(List.of())).isEqualTo(Inflow.UNKNOWN);
    }

    private static Outlook rising(double volume, double rate) {
        return Outlook.of(TANK, volume, Optional.of(trend(volume, rate)), NOTHING_KNOWN);
    }

    private static Trend trend(double volume, double rate) {
        return new Trend(Instant.EPOCH, volume, rate, 0.01, 0, 0, Duration.ofHours(1), 60);
    }
}
