package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.shutin.Terms;
import yardlight.escalation.tank.Outlook;

/** Tanks, pumps and pressures that are read each minute. */
class TankScenarioTest {

    private static final Duration WEEK = Duration.ofDays(7);

    private final SmallLease lease = new SmallLease(1);

    @Test
    void ten_ordinary_days_call_nobody() {
        lease.play(Duration.ofDays(10));

        assertThat(lease.alarms()).isEmpty();
    }

    @Test
    void a_pump_that_does_not_start_is_called_while_there_is_time_to_come() {
        lease.play(Duration.ofDays(2)).playToTheBottom();
        lease.startsAt14 = false;
        lease.inflow = 30;
        until("water-tank", "overflow", Duration.ofDays(2));

        Alarm alarm = lease.alarm("water-tank", "overflow");
        assertThat(alarm.priority()).isEqualTo(Priority.CRITICAL);
        assertThat(alarm.measured().value().orElseThrow().doubleValue()).isCloseTo(lease.level(), within(0.2));
        assertThat(alarm.measured().limit().orElseThrow())
                .isLessThanOrEqualTo(alarm.measured().value().orElseThrow());
        int called = lease.minute();
        assertThat(lease.texts().get(lease.texts().size() - 1))
                .startsWith("MESA 9 WATER TANK WILL OVERFLOW ")
                .contains(". About ")
                .contains(" to overflow, ")
                .endsWith(" at worst. Reply OK 47");
        while (lease.level() < 20) {
            lease.play(Duration.ofMinutes(1));
        }

        assertThat(lease.minute() - called).isBetween(113, 200);
        assertThat(alarm.occurrence()).isEqualTo(1);
    }

    /** The owner has turned it on that the site may be asked, and nobody answers the call. */
    @Test
    void the_site_is_asked_to_shut_in_when_hardly_any_time_is_left_and_not_before() {
        Terms usual = Terms.usual(Terms.Way.BOX, "mesa-9-box");
        Terms terms = new Terms(
                usual.way(),
                usual.through(),
                usual.point(),
                usual.done(),
                usual.refused(),
                usual.expires(),
                usual.confirmWithin(),
                Optional.of(Duration.ofMinutes(45)));
        var asked = new SmallLease(1, terms);
        asked.play(Duration.ofDays(2)).playToTheBottom();
        asked.startsAt14 = false;
        asked.inflow = 30;
        until(asked, "water-tank", "overflow", Duration.ofDays(2));
        assertThat(asked.request()).isEmpty();
        while (asked.request().isEmpty()) {
            asked.play(Duration.ofMinutes(1));
        }
        int minute = asked.minute();
        while (asked.level() < 20) {
            asked.play(Duration.ofMinutes(1));
        }

        assertThat(asked.minute() - minute).isBetween(40, 100);
        assertThat(asked.request().orElseThrow().asker().words())
                .contains("the time to overflow of water-tank/overflow");
    }

    @Test
    void a_slow_rise_is_called_higher_up_than_a_fast_one() {
        double slow = calledAt(8);
        double fast = calledAt(40);

        assertThat(slow).isGreaterThan(fast + 2);
    }

    private static double calledAt(double inflow) {
        var lease = new SmallLease(2);
        lease.startsAt14 = false;
        lease.inflow = inflow;
        until(lease, "water-tank", "overflow", Duration.ofDays(2));
        return lease.level();
    }

    @Test
    void it_is_over_when_the_tank_is_pumped_down_and_does_not_flap_before() {
        lease.play(Duration.ofDays(1)).playToTheBottom();
        lease.startsAt14 = false;
        until("water-tank", "overflow", Duration.ofDays(2));
        lease.play(Duration.ofMinutes(30));
        lease.startsAt14 = true;
        lease.play(Duration.ofMinutes(20));
        assertThat(lease.alarm("water-tank", "overflow").active()).isTrue();
        lease.play(Duration.ofHours(12));

        assertThat(lease.alarm("water-tank", "overflow").active()).isFalse();
        assertThat(lease.alarm("water-tank", "overflow").occurrence()).isEqualTo(1);
    }

    @Test
    void the_worst_rate_of_the_week_is_one_of_ordinary_fillings() {
        lease.play(Duration.ofDays(2));
        Outlook outlook = Tanks.soonest(lease.night.picture(), "mesa-9", lease.night.now())
                .orElseThrow();

        // 12 bbl an hour into a tank of 20.1 bbl a foot.
        double room = 20 - lease.level();
        assertThat(outlook.worst().orElseThrow().toMinutes())
                .isBetween((long) (room / 0.9 * 60), (long) (room / 0.55 * 60));
    }

    @Test
    void of_a_tank_that_nobody_reads_any_more_nothing_is_said() {
        lease.play(Duration.ofHours(4));

        assertThat(Tanks.soonest(
                        lease.night.picture(), "mesa-9", lease.night.now().plus(Duration.ofHours(1))))
                .isPresent();
        assertThat(Tanks.soonest(
                        lease.night.picture(), "mesa-9", lease.night.now().plus(Duration.ofHours(2))))
                .isEmpty();
        assertThat(Tanks.soonest(lease.night.picture(), "loma-4", lease.night.now()))
                .isEmpty();
    }

    @Test
    void a_belt_that_is_gone_is_a_pump_that_runs_in_vain() {
        lease.play(Duration.ofDays(2)).playToTheBottom();
        lease.pumped = 0;
        until("injection-pump", "running-without-effect", Duration.ofDays(2));

        assertThat(lease.level()).isLessThan(17);
        assertThat(lease.texts().get(0))
                .startsWith("MESA 9 INJECTION PUMP RUNS IN VAIN ")
                .endsWith(". Pump on, no effect: belt, trash or valve. Reply OK 47");
        lease.pumped = 60;
        lease.play(Duration.ofHours(1));
        assertThat(lease.alarm("injection-pump", "running-without-effect").active())
                .isFalse();
    }

    @Test
    void a_pump_that_stops_and_starts_in_vain_is_one_alarm() {
        lease.play(Duration.ofDays(2)).playToTheBottom();
        lease.injection = 400;
        lease.play(Duration.ofDays(2));

        assertThat(lease.alarm("injection-pump", "running-without-effect").occurrence())
                .isEqualTo(1);
        assertThat(lease.alarm("injection-pump", "running-without-effect").active())
                .isTrue();
        lease.injection = 800;
        lease.play(Duration.ofDays(1));
        assertThat(lease.alarm("injection-pump", "running-without-effect").active())
                .isFalse();
    }

    @Test
    void a_level_that_falls_without_the_pump_is_a_leak_or_a_switch() {
        lease.play(Duration.ofDays(1)).playToTheBottom();
        lease.inflow = -10;
        until("water-tank", "falling-without-pump", Duration.ofHours(40));

        lease.inflow = 12;
        lease.play(Duration.ofHours(3));
        assertThat(lease.alarm("water-tank", "falling-without-pump").active()).isFalse();
    }

    @Test
    void a_well_that_is_off_makes_the_pump_run_less() {
        lease.play(WEEK);
        lease.inflow = 6;
        until("injection-pump", "runs-less", Duration.ofDays(2));

        Alarm alarm = lease.alarm("injection-pump", "runs-less");
        assertThat(alarm.measured().unit()).contains("%");
        assertThat(lease.texts().get(0))
                .startsWith("MESA 9 INJECTION PUMP RUNS LESS ")
                .contains("% (limit ")
                .endsWith(". Less fluid may come in: a well off or a leak. Reply OK 47");
    }

    @Test
    void a_pump_that_wears_runs_more() {
        lease.play(WEEK);
        lease.pumped = 19;
        until("injection-pump", "runs-more", Duration.ofDays(2));

        assertThat(lease.texts().get(0)).endsWith(". The pump may be wearing. Reply OK 47");
    }

    /** About 30 psi is ordinary and 5 psi an open line: common practice, no published source. */
    @Test
    void a_separator_that_loses_its_pressure_within_minutes_is_a_leak_and_shows_the_hour_before() {
        lease.play(Duration.ofDays(4));
        for (int psi = 28; psi > 5; psi -= 3) {
            lease.line = psi;
            lease.play(Duration.ofMinutes(1));
        }
        lease.play(Duration.ofMinutes(3));

        Alarm alarm = lease.alarm("separator", "leak");
        assertThat(alarm.active()).isTrue();
        assertThat(alarm.measured().text().orElseThrow()).matches("last hour, each 5 min:( \\d+\\.\\d){12,13}");
        assertThat(lease.texts().get(0))
                .contains(" SEPARATOR LEAK ")
                .endsWith(". It never fell so fast: an open line. Reply OK 47");
        lease.line = 30;
        lease.play(Duration.ofMinutes(30));
        assertThat(lease.alarm("separator", "leak").active()).isFalse();
    }

    @Test
    void a_pressure_that_stays_low_is_the_usual_one_after_a_day() {
        lease.play(Duration.ofDays(4));
        lease.line = 10;
        until("separator", "leak", Duration.ofHours(1));
        lease.play(Duration.ofHours(23));
        assertThat(lease.alarm("separator", "leak").active()).isTrue();
        lease.play(Duration.ofHours(2));

        assertThat(lease.alarm("separator", "leak").active()).isFalse();
        assertThat(lease.alarm("separator", "leak").occurrence()).isEqualTo(1);
    }

    @Test
    void an_injection_line_that_loses_pressure_while_the_pump_runs_is_a_leak_and_its_switching_is_none() {
        lease.play(Duration.ofDays(4));
        assertThat(lease.alarms()).isEmpty();
        lease.playToTheTop().play(Duration.ofMinutes(20));
        lease.injection = 600;
        lease.play(Duration.ofMinutes(10));

        assertThat(lease.alarm("injection-line", "leak").active()).isTrue();
    }

    @Test
    void what_is_no_longer_set_up_is_over() {
        lease.play(Duration.ofDays(1)).playToTheBottom();
        lease.startsAt14 = false;
        until("water-tank", "overflow", Duration.ofDays(2));
        lease.night.at(lease.night.now(), new Stimulus.SetupChanged(Fixtures.theSetup(), "owner"));
        lease.night.run(lease.night.now());

        assertThat(lease.alarm("water-tank", "overflow").active()).isFalse();
    }

    private void until(String point, String condition, Duration most) {
        until(lease, point, condition, most);
    }

    private static void until(SmallLease lease, String point, String condition, Duration most) {
        long end = lease.minute() + most.toMinutes();
        while (lease.minute() < end && !lease.alarm(point, condition).active()) {
            lease.play(Duration.ofMinutes(1));
        }
        assertThat(lease.alarm(point, condition).active()).isTrue();
    }
}
