package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.aSite;
import static yardlight.escalation.Fixtures.ana;
import static yardlight.escalation.Fixtures.at;
import static yardlight.escalation.Fixtures.ben;
import static yardlight.escalation.Fixtures.crew;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.rehearsal.Rehearsal;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;

/** Somebody writes STOP: Ana can be reached by text and by e-mail, Ben by text only. */
class LineStoppedScenarioTest {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");
    private static final String ANA = "5755550101@txt.example";
    private static final String ANA_MAIL = "ana@mesa.example";
    private static final String BEN = "5755550102@txt.example";

    @Test
    void it_is_an_alarm_for_whom_the_gateways_ladder_calls() {
        Night night = stop(new Night(withLadder("ana")), "ben", BEN, "02:00").run("2026-11-25T02:01");

        assertThat(night.calls()).containsExactly("02:00:00 ana");
        assertThat(night.texts().get(0).words()).startsWith("GATEWAY BEN TULLY SMS-MAIL SAID STOP 2:00 AM");
        assertThat(night.timeline())
                .contains(
                        "Wed 02:00:00  line sms-mail of ben is stopped: Ben wrote STOP; no line to Ben Tully is left");
        assertThat(stopped(night, "ben", BEN).measured().text())
                .contains("Ben wrote STOP; no line to Ben Tully is left");
    }

    @Test
    void texts_go_by_the_other_lines() {
        Night night = stop(new Night(theSetup()), "ana", ANA, "02:00")
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:11");

        assertThat(night.picture().notices()).isNotEmpty().allMatch(notice -> notice.line() == 1);
        assertThat(night.timeline()).contains("Wed 02:00:00  line sms-mail of ana is stopped: Ana wrote STOP");
    }

    @Test
    void who_is_left_without_a_line_is_passed_without_waiting() {
        Night night = stop(new Night(withLadder("ben", "ana")), "ben", BEN, "02:00")
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:10:30");

        assertThat(tank(night)).containsExactly("02:10:00 ana");
    }

    @Test
    void a_call_that_waits_for_them_goes_on_at_once() {
        Night night = stop(new Night(withLadder("ben", "ana")).active("2026-11-25T02:10", TANK), "ben", BEN, "02:11")
                .run("2026-11-25T02:11:30");

        assertThat(tank(night)).containsExactly("02:10:00 ben", "02:11:00 ana");
        assertThat(night.timeline()).contains("Wed 02:11:00  callout 47 goes on at once: no line to ben is left");
    }

    @Test
    void a_call_that_somebody_else_was_told_of_waits_for_those() {
        Night night = stop(
                        new Night(withLadder("everyone", "ana")).active("2026-11-25T02:10", TANK), "ben", BEN, "02:11")
                .run("2026-11-25T02:14:59");

        assertThat(tank(night)).containsExactly("02:10:00 ana", "02:10:00 ben");
    }

    @Test
    void the_last_person_on_every_rung_leaves_an_alarm_and_a_recorded_end() {
        Night night = stop(new Night(withLadder("ben", "ben")), "ben", BEN, "02:00")
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T03:00");

        assertThat(night.calls()).isEmpty();
        assertThat(stopped(night, "ben", BEN).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.picture().alarm(TANK).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.picture().callouts()).hasSize(2).allMatch(callout -> callout.kind() == Callout.Kind.EXHAUSTED);
        assertThat(night.timeline())
                .contains(
                        "Wed 02:00:00  callout 47 exhausted: there was nobody to call",
                        "Wed 02:10:00  callout 48 exhausted: there was nobody to call");
    }

    @Test
    void the_only_person_on_a_ladder_ends_its_call_in_the_middle_of_it() {
        Night night = stop(new Night(withLadder("ben", "ben")).active("2026-11-25T02:10", TANK), "ben", BEN, "02:11")
                .run("2026-11-25T02:11:30");

        assertThat(night.calls()).containsExactly("02:10:00 ben");
        assertThat(night.picture().callouts().get(0).kind()).isEqualTo(Callout.Kind.EXHAUSTED);
    }

    @Test
    void nobody_waits_for_the_end_of_their_quiet_hours() {
        Night night = new Night(withLadder("ana")).active("2026-11-25T02:10", TANK, Priority.LOW);
        stop(stop(night, "ana", ANA, "02:20"), "ana", ANA_MAIL, "02:21").run("2026-11-25T02:21:30");

        assertThat(callout(night).kind()).isEqualTo(Callout.Kind.EXHAUSTED);
        assertThat(notice(night).state()).isEqualTo(NoticeState.REFUSED);
        assertThat(night.picture().desk("ana").waiting()).isEmpty();
    }

    @Test
    void what_is_held_for_one_who_has_a_line_left_goes_out_by_it_in_the_morning() {
        Night night = new Night(withLadder("ana")).active("2026-11-25T02:10", TANK, Priority.LOW);
        stop(night, "ana", ANA, "02:20").run("2026-11-25T06:01");

        assertThat(notice(night).line()).isEqualTo(1);
        assertThat(notice(night).state()).isEqualTo(NoticeState.HANDED_OVER);
    }

    @Test
    void one_whose_other_carrier_is_down_is_waited_for() {
        Night night = new Night(withLadder("ana"))
                .stimulus("2026-11-25T02:00", new Stimulus.Carrier("mail", true, "421 busy"));
        stop(night, "ana", ANA, "02:05")
                .active("2026-11-25T02:10", TANK)
                .stimulus("2026-11-25T02:30", new Stimulus.Carrier("mail", false, "it answers"))
                .run("2026-11-25T02:31");

        assertThat(night.calls()).contains("02:30:01 ana");
        assertThat(callout(night).facts().told()).contains("ana");
    }

    @Test
    void start_takes_the_line_up_again() {
        Night night = stop(new Night(theSetup()), "ana", ANA, "02:00");
        night.stimulus("2026-11-25T02:05", new Stimulus.Stopped("ana", ANA, false, "Ana wrote START"))
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:10:30");

        assertThat(stopped(night, "ana", ANA).active()).isFalse();
        assertThat(night.picture().notices())
                .filteredOn(notice -> notice.text().startsWith("MESA 9"))
                .isNotEmpty()
                .allMatch(notice -> notice.line() == 0);
        assertThat(night.timeline()).contains("Wed 02:05:00  line sms-mail of ana is taken up again: Ana wrote START");
    }

    @Test
    void saying_it_twice_changes_nothing() {
        Night night = stop(stop(new Night(withLadder("ana")), "ben", BEN, "02:00"), "ben", BEN, "02:01")
                .run("2026-11-25T02:02");

        assertThat(stopped(night, "ben", BEN).occurrence()).isEqualTo(1);
        assertThat(night.calls()).hasSize(1);
    }

    @Test
    void another_address_is_another_line() {
        Night night = stop(new Night(withLadder("ben")), "ben", BEN, "02:00")
                .setup("2026-11-25T02:05", withBen("5755550104@txt.example"))
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:10:30");

        assertThat(tank(night)).containsExactly("02:10:00 ben");
        assertThat(stopped(night, "ben", BEN).active()).isFalse();
        assertThat(night.picture().alarmsAt("gateway"))
                .filteredOn(Alarm::reported)
                .isEmpty();
    }

    @Test
    void a_setup_that_leaves_only_a_stopped_line_leaves_nobody_waiting_for_it() {
        var onlyText = new Contact(
                "ana",
                "Ana Ruelas",
                Fixtures.CHICAGO,
                ana().language(),
                ana().lines().subList(0, 1),
                List.of(),
                20);
        Night night = stop(new Night(withLadder("ana", "ben")), "ana", ANA, "02:00")
                .active("2026-11-25T02:10", TANK)
                .setup("2026-11-25T02:11", setup(List.of(onlyText, ben()), "ana", "ben"))
                .run("2026-11-25T02:11:30");

        assertThat(tank(night)).containsExactly("02:10:00 ana", "02:11:00 ben");
    }

    @Test
    void a_line_that_nobody_has_cannot_be_stopped() {
        Night night = stop(new Night(theSetup()), "ana", "5755550199@txt.example", "02:00")
                .run("2026-11-25T02:01");

        assertThat(night.timeline()).contains("Wed 02:00:00  line must be set up: ana, 5755550199@txt.example");
        assertThat(night.picture().alarmsAt("gateway")).isEmpty();
    }

    @Test
    void a_rehearsal_says_who_cannot_be_reached_and_calls_the_others() {
        var question =
                new Rehearsal.Question(TANK, Optional.empty(), at("2026-11-25T02:10"), Map.of("ana", Duration.ZERO));

        List<Rehearsal.Line> lines = Rehearsal.of(withLadder("ben", "ana"), question, Set.of(Stop.key("ben", BEN)));

        assertThat(lines)
                .extracting(line -> line.what() + " " + line.contact().orElse(""))
                .containsExactly("unreachable ben", "told ana", "answered ana");
    }

    private static Night stop(Night night, String contact, String address, String clock) {
        String name = contact.equals("ana") ? "Ana" : "Ben";
        return night.stimulus(
                "2026-11-25T" + clock, new Stimulus.Stopped(contact, address, true, name + " wrote STOP"));
    }

    private static Alarm stopped(Night night, String contact, String address) {
        return night.picture().alarm(Stop.key(contact, address));
    }

    /** The calls about the tank. */
    private static List<String> tank(Night night) {
        return night.texts().stream()
                .filter(text -> text.words().startsWith("MESA 9"))
                .map(text -> CLOCK.format(text.at().atZone(Fixtures.CHICAGO)) + " " + text.contact())
                .toList();
    }

    private static Callout callout(Night night) {
        return night.picture().callouts().stream()
                .filter(callout -> callout.facts().site().equals("mesa-9"))
                .findFirst()
                .orElseThrow();
    }

    private static Notice notice(Night night) {
        return night.picture().notices().stream()
                .filter(notice -> notice.callouts().contains(callout(night).id()))
                .findFirst()
                .orElseThrow();
    }

    private static Setup withBen(String address) {
        var other = new Contact(
                "ben",
                "Ben Tully",
                Fixtures.CHICAGO,
                ben().language(),
                List.of(new Line("sms-mail", address)),
                List.of(),
                20);
        return setup(List.of(ana(), other), "ben");
    }

    private static Setup withLadder(String... calls) {
        return setup(List.of(ana(), ben()), calls);
    }

    /** One rung of five minutes for each of these. */
    private static Setup setup(List<Contact> contacts, String... calls) {
        List<Rung> rungs = Stream.of(calls)
                .map(call -> new Rung(List.of(call), Duration.ofMinutes(5), 1))
                .toList();
        return new Setup(
                List.of(aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                contacts,
                List.of(crew()),
                List.of(new Ladder("night", Ladder.EndsWhen.ACKNOWLEDGED, rungs, 0)));
    }
}
