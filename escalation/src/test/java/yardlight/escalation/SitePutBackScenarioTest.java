package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** A site, or a point, that is taken out of the setup and put back later: what was found in its readings is found anew. */
class SitePutBackScenarioTest {

    private static final AlarmKey HIGH = new AlarmKey("mesa-9", "water-tank", "high");
    private static final AlarmKey MISSING = new AlarmKey("mesa-9", "water-tank", "missing");

    private final Setup both = setup(true, Fixtures.measuredTank());
    private final Night day = Night.withHeartbeats(both);

    private static Setup setup(boolean mesa, Point... points) {
        var loma = new Site("loma-4", "Loma 4", Fixtures.CHICAGO, "night");
        return new Setup(
                mesa ? List.of(loma, Fixtures.aSite()) : List.of(loma),
                mesa ? List.of(Fixtures.aBox()) : List.<Box>of(),
                List.of(points),
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(Fixtures.night()));
    }

    /** The level is read each minute, the last time not included. */
    private void reads(String from, String to, double level) {
        minutes(from, to)
                .forEach(minute -> day.stimulus(
                        minute,
                        new Stimulus.Measured(
                                "mesa-9-box", List.of(new Reading("mesa-9", "water-tank", level, at(minute))))));
    }

    private void beats(String from, String to) {
        minutes(from, to).forEach(minute -> day.stimulus(minute, new Stimulus.Beat("mesa-9-box", Heartbeat.BARE)));
    }

    private static Stream<String> minutes(String from, String to) {
        Instant first = at(day(from));
        return Stream.iterate(first, at(day(to))::isAfter, minute -> minute.plusSeconds(60))
                .map(minute -> minute.atZone(Fixtures.CHICAGO).toLocalDateTime().toString());
    }

    private static String day(String time) {
        return "2026-11-25T" + time;
    }

    private Alarm alarm(AlarmKey key) {
        return day.picture().alarm(key);
    }

    @Test
    void a_level_that_was_high_when_the_site_was_taken_out_calls_nobody_when_it_is_back_and_the_level_is_not() {
        reads("12:00", "12:05", 17);
        day.setup(day("12:05"), setup(false)).run(day("13:59"));
        assertThat(alarm(HIGH).state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        int told = day.texts().size();

        day.setup(day("14:00"), both);
        reads("14:01", "15:30", 10);
        day.run(day("15:29"));

        assertThat(day.texts()).hasSize(told);
        assertThat(alarm(HIGH).active()).isFalse();
    }

    @Test
    void a_level_that_is_still_high_is_called_by_its_next_reading() {
        reads("12:00", "12:05", 17);
        day.setup(day("12:05"), setup(false)).setup(day("14:00"), both).run(day("14:00"));
        int told = day.texts().size();

        reads("14:01", "14:04", 17.5);
        day.run(day("14:03"));

        assertThat(alarm(HIGH).activations()).last().isEqualTo(at(day("14:01")));
        assertThat(day.texts().get(told).words()).startsWith("MESA 9 WATER TANK HIGH 17.5 ft");
    }

    @Test
    void what_a_box_reported_itself_is_called_again() {
        day.active(day("12:00"), Fixtures.PUMP)
                .setup(day("12:05"), setup(false))
                .run(day("13:59"));
        int told = day.texts().size();

        day.setup(day("14:00"), both).run(day("14:00"));

        assertThat(alarm(Fixtures.PUMP).active()).isTrue();
        assertThat(day.texts()).hasSizeGreaterThan(told);
    }

    @Test
    void a_sensor_that_died_meanwhile_is_missed_after_its_time() {
        reads("12:00", "12:05", 10);
        beats("14:00", "15:00");

        putBack(setup(false), "14:14");
        assertThat(alarm(MISSING).active()).isFalse();
        day.run(day("14:15"));

        assertThat(alarm(MISSING).active()).isTrue();
    }

    @Test
    void a_sensor_that_was_missed_before_is_missed_again() {
        reads("12:00", "12:05", 10);
        beats("12:05", "13:00");
        beats("14:00", "15:00");
        day.run(day("12:59"));
        assertThat(alarm(MISSING).active()).isTrue();

        putBack(setup(false), "14:00");
        assertThat(alarm(MISSING).active()).isFalse();
        day.run(day("14:15"));

        assertThat(alarm(MISSING).active()).isTrue();
        assertThat(alarm(MISSING).activations()).last().isEqualTo(at(day("14:15")));
    }

    @Test
    void a_point_alone_that_is_put_back_is_waited_for_as_well() {
        reads("12:00", "12:05", 10);
        beats("12:05", "15:00");

        putBack(setup(true), "14:14");
        assertThat(alarm(MISSING).active()).isFalse();
        day.run(day("14:15"));

        assertThat(alarm(MISSING).active()).isTrue();
    }

    /** It is put back at two o'clock. */
    private void putBack(Setup without, String until) {
        day.setup(day("13:00"), without).setup(day("14:00"), both).run(day(until));
    }

    @Test
    void a_point_that_was_never_read_is_not_waited_for() {
        beats("14:00", "15:00");

        putBack(setup(false), "14:59");

        assertThat(day.picture().gauge(new Gauge.Key("mesa-9", "water-tank")).deadline())
                .isEqualTo(Optional.empty());
    }
}
