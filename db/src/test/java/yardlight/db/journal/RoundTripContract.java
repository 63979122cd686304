package yardlight.db.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import yardlight.db.TestDatabase;
import yardlight.escalation.Changes;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Flood;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.Absence;
import yardlight.escalation.heartbeat.Arrivals;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Habit;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.heartbeat.Path;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.limit.Gauge;
import yardlight.escalation.notice.Awaited;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.notice.Purpose;
import yardlight.escalation.proof.LineHealth;
import yardlight.escalation.quiet.Desk;
import yardlight.escalation.quiet.Tray;

/** Every part of every value comes back from the database as it was, on every database. */
abstract class RoundTripContract {

    private static final Instant AT = Instant.parse("2026-11-25T08:13:00.123456Z");

    private DataSource source;

    abstract TestDatabase database();

    @BeforeEach
    void open() {
        source = database().newDataSource();
    }

    @Test
    void an_alarm_with_every_part_of_it_set() {
        Alarm alarm = fullAlarm();
        for (RecordComponent part : Alarm.class.getRecordComponents()) {
            if (!part.getName().equals("key")) {
                assertThat(value(part, alarm))
                        .as("the sample sets %s, so that a forgotten column shows", part.getName())
                        .isNotEqualTo(value(part, Alarm.normal(alarm.key())));
            }
        }

        Sheet read = stored(new Changes(List.of(alarm), List.of(), List.of(), List.of(), List.of(), Map.of()));

        assertThat(read.alarm(alarm.key())).isEqualTo(alarm);
        assertThat(read.alarmsAt("mesa-9")).containsExactly(alarm);
    }

    @Test
    void a_callout_of_every_kind() {
        List<Callout> callouts = List.of(
                new Callout.Calling(facts("c-1"), new Place(1, 2, 3), AT.plusSeconds(1)),
                new Callout.Held(facts("c-2"), new Place(0, 1, 0), AT.plusSeconds(2)),
                new Callout.Answered(facts("c-3"), Place.FOOT, "ana", AT.plusSeconds(3)),
                new Callout.Ended(facts("c-4"), Place.FOOT, Optional.of(AT.plusSeconds(4)), "returned", AT),
                new Callout.Ended(facts("c-5"), Place.FOOT, Optional.empty(), "returned", AT),
                new Callout.Exhausted(facts("c-6"), Place.FOOT, AT.plusSeconds(6)));
        assertThat(callouts).extracting(Callout::kind).contains(Callout.Kind.values());

        Sheet read = stored(new Changes(List.of(), callouts, List.of(), List.of(), List.of(), Map.of()));

        assertThat(callouts)
                .allSatisfy(one -> assertThat(read.callout(one.id())).contains(one));
        assertThat(read.calloutsAt("mesa-9")).extracting(Callout::id).containsExactly("c-1", "c-2");
    }

    @Test
    void a_notice_in_every_state_as_a_call_or_as_news() {
        List<Notice> notices = Stream.of(NoticeState.values())
                .map(state -> new Notice(
                        "n-" + state.word(),
                        "ana",
                        List.of("c-1", "c-2"),
                        Priority.CRITICAL,
                        "MESA 9 WATER TANK HIGH-HIGH",
                        state,
                        AT,
                        Optional.of(AT.plusSeconds(1)),
                        Optional.of("n-other"),
                        1,
                        Optional.of(new Awaited(AT, AT.plusSeconds(120))),
                        state == NoticeState.HELD ? Purpose.NEWS : Purpose.CALL))
                .toList();

        Sheet read = stored(new Changes(List.of(), List.of(), notices, List.of(), List.of(), Map.of()));

        assertThat(notices).allSatisfy(one -> assertThat(read.notice(one.id())).contains(one));
    }

    @Test
    void a_notice_about_no_callout() {
        List<Notice> notices = Stream.of(Purpose.ALLS_WELL, Purpose.SHUT_IN, Purpose.TEST, Purpose.TURN)
                .map(purpose -> Notice.other(purpose, "n-" + purpose.word(), "ana", AT, 1))
                .toList();

        Sheet read = stored(new Changes(List.of(), List.of(), notices, List.of(), List.of(), Map.of()));

        assertThat(notices).allSatisfy(one -> assertThat(read.notice(one.id())).contains(one));
        assertThat(read.queued("mail")).containsExactlyElementsOf(notices);
    }

    @Test
    void a_line_with_every_part_of_it_set_and_one_of_which_nothing_is_known() {
        var line = new LineHealth(
                new LineHealth.Key("ana", "mail", "ana@mesa.example"),
                Optional.of(AT),
                Optional.of(AT.plusSeconds(1)),
                Optional.of(AT.plusSeconds(2)),
                Optional.of(new LineHealth.Trouble(AT.plusSeconds(3), "550 no such user")),
                Optional.of(new LineHealth.Test("n-1", 2, AT.plusSeconds(4), true)));
        var bare = LineHealth.unknown(new LineHealth.Key("ben", "push", "x".repeat(1_200)));

        Sheet read = stored(
                new Changes(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of(line, bare)));

        assertThat(read.health(line.key())).isEqualTo(line);
        assertThat(read.health(bare.key())).isEqualTo(bare);
    }

    @Test
    void a_desk_a_box_and_a_flood() {
        var desk = new Desk(
                "ana",
                List.of(new Desk.Sent(AT, List.of("c-1", "c-2"), true), new Desk.Sent(AT, List.of(), false)),
                List.of(new Desk.Waiting("n-1", AT.plusSeconds(9))),
                7,
                true,
                Optional.of(new Desk.AllsWellAt(AT.plusSeconds(60), AT.plusSeconds(61))),
                new Tray(List.of(new Desk.Waiting("n-2", AT.plusSeconds(120))), List.of(AT, AT.plusSeconds(9))));
        var said = new Heartbeat(
                Optional.of(Duration.ofSeconds(86_401)),
                Map.of("pump", true, "wells", false),
                Optional.of(12.6),
                Optional.of(-97.0),
                Optional.of(AT.minusSeconds(3)));
        double[] learned = {60.1, 1 / 3.0, 999.9, 250.7, 199.3, 3, 120.2, 1};
        var arrivals = Arrivals.of(Optional.of(AT.minusSeconds(60)), learned);
        var watch = new BoxWatch(
                "mesa-9-box",
                AT,
                Optional.of(AT.plusSeconds(180)),
                true,
                said,
                Optional.of(Path.feed("north line", "night")),
                new Habit(Optional.of(13.6), Optional.of(-80.5)),
                arrivals);
        var flood = new Flood(List.of(AT, AT.plusSeconds(1)), true);

        Sheet read = stored(
                new Changes(List.of(), List.of(), List.of(), List.of(desk), List.of(watch), Map.of("mesa-9", flood)));

        assertThat(read.desk("ana")).isEqualTo(desk);
        assertThat(read.box("mesa-9-box")).contains(watch);
        assertThat(read.flood("mesa-9")).isEqualTo(flood);
    }

    @Test
    void a_silence_and_the_next_on_the_same_link() {
        Absence first = MadeSilence.of("mesa-9.link-hub.silent.1", Path.link("the hub", "night"), AT);
        Absence over = first.joined("loma-4-box", AT.plusSeconds(1))
                .back("loma-4-box", AT.plusSeconds(60))
                .back("mesa-9-box", AT.plusSeconds(61));
        Absence next = MadeSilence.of("mesa-9.link-hub.silent.2", Path.link("the hub", "night"), AT);

        Sheet read = stored(Changes.of(List.of(first)), Changes.of(List.of(over)), Changes.of(List.of(over, next)));

        assertThat(read.absence(first.path())).contains(next);
        assertThat(read.absence(Path.link("the hub", "day"))).isEmpty();
        var all = new JdbcTemplate(source).queryForList("select alarm from silence order by alarm", String.class);
        assertThat(all).containsExactly(first.alarm(), next.alarm());
    }

    @Test
    void what_is_remembered_of_the_readings_of_a_point() {
        Gauge gauge = MadeGauge.of(new Gauge.Key("mesa-9", "water-tank"), AT);

        Sheet read = stored(Changes.gauged(List.of(gauge)));

        assertThat(read.gauge(gauge.key())).isEqualTo(gauge);
        assertThat(read.gauge(gauge.key()).recent().size()).isGreaterThan(190);
        assertThat(read.gauge(new Gauge.Key("mesa-9", "separator")))
                .isEqualTo(Gauge.unread(new Gauge.Key("mesa-9", "separator")));
    }

    @Test
    void nothing_where_nothing_was_ever_written() {
        Sheet read = stored(new Changes(List.of(), List.of(), List.of(), List.of(), List.of(), Map.of()));

        assertThat(read.alarm(Fixtures.TANK)).isEqualTo(Alarm.normal(Fixtures.TANK));
        assertThat(read.desk("ana")).isEqualTo(Desk.empty("ana"));
        assertThat(read.flood("mesa-9")).isEqualTo(Flood.NONE);
        assertThat(read.box("mesa-9-box")).isEmpty();
        assertThat(read.callout("c-1")).isEmpty();
        assertThat(read.notice("n-1")).isEmpty();
    }

    private Sheet stored(Changes... changes) {
        for (Changes each : changes) {
            try (var journal = new Journal(source);
                    Writing writing = journal.begin()) {
                Sheet sheet = writing.sheet(Fixtures.theSetup());
                each.absences().forEach(absence -> sheet.absence(absence.path()));
                sheet.apply(each);
                writing.commit(sheet, AT);
            }
        }
        return new Journal(source).begin().sheet(Fixtures.theSetup());
    }

    private static Callout.Facts facts(String id) {
        return new Callout.Facts(
                id,
                47,
                "mesa-9",
                "night",
                Priority.HIGH,
                List.of(Fixtures.TANK, Fixtures.PUMP),
                AT,
                3,
                2,
                Set.of("ana", "ben"),
                Map.of("cat", AT.plusSeconds(60), "dan", AT.plusSeconds(90)));
    }

    private static Alarm fullAlarm() {
        return Alarm.normal(new AlarmKey("mesa-9", "water-tank", "high-high"))
                .draft()
                .occurrence(3)
                .state(AlarmState.SHELVED)
                .box(Optional.of("mesa-9-box"))
                .priority(Priority.CRITICAL)
                .measured(new Measured(
                        Optional.of(new BigDecimal("18.40")),
                        Optional.of(new BigDecimal("1E+3")),
                        Optional.of("°C"),
                        Optional.of("¡Válvula abierta; \"sí\"!")))
                .active(true)
                .seen(false)
                .latched(true)
                .repeats(12)
                .occurredAt(Optional.of(AT))
                .receivedAt(Optional.of(AT.plusSeconds(1)))
                .acknowledgedAt(Optional.of(AT.plusSeconds(2)))
                .acknowledgedBy(Optional.of("ana"))
                .returnedAt(Optional.of(AT.plusSeconds(3)))
                .shelvedUntil(Optional.of(AT.plusSeconds(4)))
                .pendingSince(Optional.of(AT.plusSeconds(5)))
                .clearingSince(Optional.of(AT.plusSeconds(6)))
                .declaredAt(Optional.of(AT.plusSeconds(7)))
                .realarmAt(Optional.of(AT.plusSeconds(8)))
                .activations(List.of(AT, AT.plusNanos(1_000)))
                .callout(Optional.of("c-1"))
                .reading(Optional.of("power-off"))
                .done();
    }

    private static Object value(RecordComponent part, Alarm alarm) {
        try {
            return part.getAccessor().invoke(alarm);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
