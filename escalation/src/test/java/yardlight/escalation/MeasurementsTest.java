package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Nuisance;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.limit.Rules;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.reading.Reading;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.wording.Links;

/** Readings become alarms as events do. */
class MeasurementsTest {

    private static final Instant NOON = at("2026-11-25T12:00");
    private static final AlarmKey HIGH = new AlarmKey("mesa-9", "water-tank", "high");
    private static final AlarmKey MISSING = new AlarmKey("mesa-9", "water-tank", "missing");
    private static final AlarmKey SILENT = BoxAlarms.silence("mesa-9");

    private Simulation night = of(Fixtures.measuring());

    private static Simulation of(Setup setup) {
        var codes = new ArrayList<Integer>();
        var night = new Simulation(setup, new Escalator(Links.NONE, () -> {
            codes.add(1);
            return 46 + codes.size();
        }));
        night.watch(happening -> happening.decision().changes().notices().stream()
                .filter(notice -> notice.state() == NoticeState.QUEUED)
                .forEach(notice -> night.at(
                        happening.at(),
                        new Stimulus.NoticeFate(notice.id(), notice.line(), Stimulus.Fate.HANDED_OVER, "250 taken"))));
        return night;
    }

    private static Setup with(Box box, Point... points) {
        Setup all = Fixtures.measuring();
        return new Setup(
                List.copyOf(all.sites().values()),
                List.of(box),
                List.of(points),
                List.copyOf(all.contacts().values()),
                List.copyOf(all.rosters().values()),
                List.copyOf(all.ladders().values()));
    }

    private static Reading level(double value, int minute) {
        return new Reading("mesa-9", "water-tank", value, NOON.plusSeconds(60L * minute));
    }

    /** The tank is read each minute, from one minute to another, both included. */
    private void read(int from, int to, double value) {
        for (int minute = from; minute <= to; minute++) {
            night.at(
                    NOON.plusSeconds(60L * minute), new Stimulus.Measured("mesa-9-box", List.of(level(value, minute))));
        }
        night.run(NOON.plusSeconds(60L * to));
    }

    private Stimulus posted(Reading... readings) {
        return new Stimulus.Measured("mesa-9-box", List.of(readings));
    }

    private void until(int minute) {
        night.run(NOON.plusSeconds(60L * minute));
    }

    private void beats(int from, int to) {
        for (int minute = from; minute <= to; minute++) {
            night.at(NOON.plusSeconds(60L * minute), new Stimulus.Beat("mesa-9-box", Heartbeat.BARE));
        }
    }

    private Alarm alarm(AlarmKey key) {
        return night.picture().alarm(key);
    }

    private List<String> texts() {
        return night.picture().notices().stream()
                .filter(notice -> notice.purpose() == Purpose.CALL)
                .map(Notice::text)
                .toList();
    }

    @Test
    void a_value_beyond_its_limit_is_an_alarm_and_one_within_the_deadband_still_is() {
        read(0, 4, 15.9);
        read(5, 5, 16.1);
        assertThat(alarm(HIGH).active()).isTrue();
        read(6, 9, 15.6);
        assertThat(alarm(HIGH).active()).isTrue();
        read(10, 10, 15.4);

        assertThat(alarm(HIGH).active()).isFalse();
        assertThat(alarm(HIGH).occurrence()).isEqualTo(1);
        assertThat(alarm(HIGH).occurredAt()).contains(NOON.plusSeconds(300));
        assertThat(alarm(HIGH).returnedAt()).contains(NOON.plusSeconds(600));
        assertThat(texts().get(0)).isEqualTo("MESA 9 WATER TANK HIGH 16.1 ft (limit 16) 12:05 PM. Reply OK 47");
    }

    @Test
    void a_box_that_nobody_set_up_is_refused() {
        Decision decision = new Escalator(Links.NONE, () -> 1)
                .decide(night.picture(), new Stimulus.Measured("loma-4-box", List.of(level(1, 0))), NOON);

        assertThat(decision.answer()).isEqualTo(new Answer.Refusal("box must be set up: loma-4-box"));
        assertThat(decision.changes().gauges()).isEmpty();
    }

    @Test
    void readings_are_a_sign_of_life() {
        read(0, 30, 10);

        assertThat(alarm(SILENT).active()).isFalse();
        until(40);
        assertThat(alarm(SILENT).active()).isTrue();
    }

    @Test
    void going_on_is_no_repeat_and_people_are_told_the_newest_value() {
        read(0, 0, 16.1);
        read(1, 6, 16.7);

        assertThat(alarm(HIGH).repeats()).isZero();
        assertThat(texts()).hasSize(2);
        assertThat(texts().get(1)).isEqualTo("MESA 9 WATER TANK HIGH 16.7 ft (limit 16) 12:00 PM. Reply OK 47");
    }

    @Test
    void an_on_delay_counts_as_it_does_for_events() {
        var timing = new Timing(Duration.ofMinutes(3), Duration.ZERO, false, Optional.empty(), Nuisance.Numbers.USUAL);
        night = of(with(Fixtures.aBox(), Fixtures.measuredTank().with(timing)));

        read(0, 1, 16.1);
        read(2, 2, 15);
        read(3, 5, 16.1);
        assertThat(alarm(HIGH).occurrence()).isZero();
        read(6, 6, 16.1);

        assertThat(alarm(HIGH).active()).isTrue();
        assertThat(alarm(HIGH).activations()).hasSize(1);
    }

    @Test
    void a_backlog_calls_nobody_for_what_is_over_by_its_end() {
        night.at(NOON.plusSeconds(3_600), posted(level(15, 4), level(17, 3), level(17, 1), level(15, 0)));
        until(70);

        assertThat(alarm(HIGH).occurrence()).isEqualTo(1);
        assertThat(alarm(HIGH).active()).isFalse();
        assertThat(texts()).noneMatch(text -> text.contains("HIGH"));
    }

    @Test
    void a_reading_that_comes_late_turns_nothing_back() {
        read(0, 5, 16.1);
        night.at(NOON.plusSeconds(301), posted(level(12, 4), level(12, 5)));
        until(6);

        assertThat(alarm(HIGH).active()).isTrue();
    }

    @Test
    void a_point_that_is_not_read_any_more_is_missed_although_its_box_is_well() {
        beats(0, 60);
        read(0, 5, 10);
        until(19);
        assertThat(alarm(MISSING).active()).isFalse();
        until(20);

        assertThat(alarm(MISSING).active()).isTrue();
        assertThat(texts()).first().asString().isEqualTo("MESA 9 WATER TANK NO READINGS 12:20 PM. Reply OK 47");
        read(30, 30, 10);
        assertThat(alarm(MISSING).active()).isFalse();
        assertThat(alarm(MISSING).returnedAt()).contains(NOON.plusSeconds(1_800));
    }

    @Test
    void while_the_box_is_silent_its_points_are_no_matter_of_their_own() {
        beats(0, 5);
        read(0, 5, 10);
        until(120);
        assertThat(alarm(SILENT).active()).isTrue();
        assertThat(alarm(MISSING).occurrence()).isZero();

        beats(121, 180);
        until(135);
        assertThat(alarm(MISSING).occurrence()).isZero();
        until(155);

        assertThat(alarm(MISSING).active()).isTrue();
    }

    @Test
    void of_a_box_without_heartbeats_the_first_point_that_is_missed_is_enough() {
        var box = new Box(
                "mesa-9-box", "mesa-9", Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO);
        Rules missed = Fixtures.measuredTank().rules();
        night = of(with(box, Fixtures.measuredTank(), Fixtures.injectionPump().with(missed)));
        night.at(NOON, posted(level(10, 0), new Reading("mesa-9", "injection-pump", 10, NOON)));

        until(120);

        assertThat(night.picture().alarms().stream().filter(Alarm::active).map(Alarm::key))
                .hasSize(1)
                .first()
                .extracting(AlarmKey::condition)
                .isEqualTo("missing");
    }

    @Test
    void while_the_gateway_was_away_nothing_could_arrive() {
        beats(0, 15);
        read(0, 5, 10);
        var key = new Gauge.Key("mesa-9", "water-tank");
        Instant back = NOON.plusSeconds(3_600);
        var escalator = new Escalator(Links.NONE, () -> 1);
        Picture picture = night.picture();
        picture.apply(escalator
                .decide(picture, new Stimulus.Beat("mesa-9-box", Heartbeat.BARE), back)
                .changes());

        picture.apply(escalator
                .decide(picture, new Stimulus.GaugeDue(key, back), back)
                .changes());

        assertThat(picture.gauge(key).deadline()).contains(back.plusSeconds(900));
        assertThat(alarm(MISSING).occurrence()).isZero();

        Instant again = back.plusSeconds(900);
        picture.apply(escalator
                .decide(picture, new Stimulus.Beat("mesa-9-box", Heartbeat.BARE), again)
                .changes());
        Decision once = escalator.decide(picture, new Stimulus.GaugeDue(key, again.minusSeconds(9)), again);
        assertThat(once.changes().alarms()).extracting(Alarm::key).containsExactly(MISSING);
    }

    @Test
    void another_setup_judges_anew_at_once() {
        read(0, 5, 16.4);
        assertThat(alarm(HIGH).active()).isTrue();
        night.at(NOON.plusSeconds(310), changed(Fixtures.waterTank()));
        until(6);
        assertThat(alarm(HIGH).active()).isFalse();
        night.at(NOON.plusSeconds(370), changed(Fixtures.measuredTank()));
        until(7);

        assertThat(alarm(HIGH).active()).isTrue();
        assertThat(alarm(HIGH).measured().value()).contains(new BigDecimal("16.4"));
    }

    private static Stimulus changed(Point tank) {
        return new Stimulus.SetupChanged(with(Fixtures.aBox(), tank), "owner");
    }

    @Test
    void every_stimulus_has_its_kind() {
        List<? extends Class<?>> kinds =
                Stream.of(Stimulus.class.getPermittedSubclasses()).toList();

        assertThat(kinds).hasSameSizeAs(Stimulus.Kind.values());
        assertThat(posted().kind()).isEqualTo(Stimulus.Kind.MEASURED);
    }
}
