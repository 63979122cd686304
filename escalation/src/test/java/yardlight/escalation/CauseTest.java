package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.OneCauseOneCalloutScenarioTest.tank;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.limit.Conditions;
import yardlight.escalation.limit.Gauge;

class CauseTest {

    private final Picture picture = new Picture(Fixtures.theSetup());

    @Test
    void goes_up_or_down_at_one_point() {
        assertThat(of("high")).isEqualTo(of("overflow")).isNotEqualTo(of("low"));
        assertThat(of("low")).isEqualTo(of("leak"));
        assertThat(of("stuck")).isEmpty();
        assertThat(of("missing")).isEmpty();
    }

    @Test
    void of_a_drift_is_told_by_the_sum_that_found_it_and_not_by_what_is_read_now() {
        Gauge gauge = Gauge.unread(new Gauge.Key("mesa-9", "water-tank")).with(Conditions.DRIFT, true);
        Alarm below = drift("11", "12");

        picture.apply(Changes.gauged(List.of(gauge.noting("drift", List.of(40.0, 0.0, 1.0)))));
        assertThat(Cause.of(picture, below)).isEqualTo(of("high"));

        picture.apply(Changes.gauged(List.of(gauge.noting("drift", List.of(0.0, 40.0, 0.0)))));
        assertThat(Cause.of(picture, below)).isEqualTo(of("low"));
    }

    @Test
    void of_a_drift_that_a_box_found_is_told_by_its_numbers() {
        assertThat(Cause.of(picture, drift("13", "12"))).isEqualTo(of("high"));
        assertThat(Cause.of(picture, drift("11", "12"))).isEqualTo(of("low"));
        assertThat(Cause.of(picture, drift("12", "12"))).isEmpty();
        assertThat(of("drift")).isEmpty();
    }

    @Test
    void is_worse_the_further_it_goes_and_the_more_urgent_it_is() {
        List<String> up = List.of("drift", "high", "high-high", "overflow");
        for (int i = 1; i < up.size(); i++) {
            assertThat(Cause.worse(alarm(up.get(i)), alarm(up.get(i - 1)))).isTrue();
            boolean foretold = up.get(i).equals("overflow");
            assertThat(Cause.worse(alarm(up.get(i - 1)), alarm(up.get(i)))).isEqualTo(foretold);
        }
        assertThat(Cause.worse(alarm("drift"), alarm("rising-fast"))).isFalse();
        assertThat(Cause.worse(alarm("low-low"), alarm("low"))).isTrue();
        assertThat(Cause.worse(alarm("low-low"), alarm("leak"))).isTrue();
        assertThat(Cause.worse(alarm("leak"), alarm("low-low"))).isTrue();
        assertThat(Cause.worse(alarm("high"), alarm("overflow"))).isFalse();
        assertThat(Cause.worse(urgent(Priority.HIGH), alarm("overflow"))).isTrue();
        assertThat(Cause.worse(urgent(Priority.CRITICAL), urgent(Priority.CRITICAL)))
                .isTrue();
    }

    @Test
    void is_near_whatever_goes_either_way_at_the_point() {
        assertThat(Cause.near(tank("drift")))
                .contains(tank("high"), tank("low"))
                .doesNotContain(tank("drift"));
        assertThat(Cause.near(tank("hatch-open"))).isEmpty();
    }

    private Optional<Cause> of(String condition) {
        return Cause.of(picture, alarm(condition));
    }

    private static Alarm alarm(String condition) {
        return Alarm.normal(tank(condition));
    }

    private static Alarm urgent(Priority priority) {
        return alarm("drift").draft().priority(priority).done();
    }

    private static Alarm drift(String value, String target) {
        var measured = new Measured(
                Optional.of(new BigDecimal(value)),
                Optional.of(new BigDecimal(target)),
                Optional.of("ft"),
                Optional.empty());
        return alarm("drift").draft().measured(measured).done();
    }
}
