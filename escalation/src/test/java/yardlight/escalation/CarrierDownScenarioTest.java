package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.PUMP;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.Fixtures.aSite;
import static yardlight.escalation.Fixtures.ana;
import static yardlight.escalation.Fixtures.ben;
import static yardlight.escalation.Fixtures.crew;
import static yardlight.escalation.Fixtures.night;
import static yardlight.escalation.Fixtures.theSetup;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Measured;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.alarm.Report;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.rehearsal.Simulation;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.escalation.wording.Links;

/** Nights on which a carrier is away: Ana can be reached by e-mail as well, Ben by text only. */
class CarrierDownScenarioTest {

    private static final AlarmKey DOWN = new AlarmKey("gateway", "sms-mail", "down");

    @Test
    void it_is_an_alarm_for_whom_another_carrier_reaches() {
        Night night = down(new Night(theSetup()), "02:00").run("2026-11-25T03:30");

        assertThat(night.calls()).startsWith("02:01:00 ana", "02:06:00 ana", "02:11:00 ana");
        assertThat(night.calls()).noneMatch(call -> call.endsWith("ben"));
        assertThat(night.texts().get(0).words()).startsWith("GATEWAY SMS-MAIL DOWN 2:00 AM");
        assertThat(night.picture().notices()).allMatch(notice -> notice.line() == 1);
        assertThat(night.timeline()).contains("Wed 02:00:00  carrier sms-mail is down: localhost:25 cannot be reached");
    }

    @Test
    void it_is_over_once_the_carrier_has_been_back_for_five_minutes() {
        Night night = up(down(new Night(theSetup()), "02:00"), "02:03").run("2026-11-25T02:08");

        Alarm alarm = night.picture().alarm(DOWN);
        assertThat(alarm.state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(night.calls()).containsExactly("02:01:00 ana", "02:06:00 ana");
        assertThat(night.timeline()).contains("Wed 02:03:00  carrier sms-mail is back: localhost:25 cannot be reached");
    }

    @Test
    void a_carrier_that_is_back_within_a_minute_calls_nobody() {
        Night night = up(down(new Night(theSetup()), "02:00:00"), "02:00:40").run("2026-11-25T04:00");

        assertThat(night.calls()).isEmpty();
        assertThat(night.picture().alarm(DOWN).occurrence()).isZero();
    }

    @Test
    void one_that_comes_and_goes_for_an_hour_is_one_alarm() {
        Night night = new Night(theSetup()).answers("ana", Duration.ofMinutes(2));
        for (int minute = 0; minute < 60; minute += 4) {
            down(night, "02:%02d".formatted(minute));
            up(night, "02:%02d".formatted(minute + 2));
        }
        night.run("2026-11-25T04:00");

        assertThat(night.calls()).containsExactly("02:01:00 ana");
        assertThat(night.picture().alarm(DOWN).occurrence()).isEqualTo(1);
        assertThat(night.picture().alarm(DOWN).state()).isEqualTo(AlarmState.NORMAL);
    }

    @Test
    void texts_go_by_the_other_line_while_it_lasts_and_by_the_best_one_after() {
        Night night = up(down(new Night(withLadder("ana", "ana")), "02:00"), "02:12")
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:16");

        assertThat(night.picture().notices().stream()
                        .filter(notice -> notice.text().startsWith("MESA 9")))
                .extracting(notice -> notice.line())
                .containsExactly(1, 0);
    }

    @Test
    void the_next_on_the_ladder_is_called_at_once_while_somebody_cannot_be_reached() {
        Night night = down(new Night(withLadder("ben", "ana")), "02:00")
                .active("2026-11-25T02:10", TANK)
                .run("2026-11-25T02:11");

        assertThat(night.texts())
                .filteredOn(text -> text.words().startsWith("MESA 9"))
                .extracting(Night.Text::contact)
                .containsExactly("ana");
    }

    @Test
    void what_waited_for_it_goes_out_in_one_message_the_worst_first_and_without_what_is_over() {
        var heater = new AlarmKey("mesa-9", "heater", "off");
        Night night = down(new Night(withLadder("ben")), "02:00")
                .active("2026-11-25T02:10", TANK, Priority.MEDIUM)
                .active("2026-11-25T02:20", PUMP, Priority.CRITICAL)
                .active("2026-11-25T02:25", heater)
                .stimulus("2026-11-25T02:40", new Stimulus.Acknowledge(heater, "ben", "page", Optional.empty()));
        up(night, "03:00").run("2026-11-25T03:00:30");

        assertThat(night.calls()).containsExactly("03:00:00 ben");
        assertThat(night.texts().get(0).words()).startsWith("MESA 9: 2 alarms, worst INJECTION PUMP OFF");
        assertThat(night.picture().notices().stream()
                        .filter(notice -> notice.callouts().get(0).contains("heater")))
                .isNotEmpty()
                .allMatch(notice -> notice.state() == NoticeState.CANCELLED);
        assertThat(night.timeline()).contains("Wed 02:40:00  cancelled: it is over");
    }

    @Test
    void the_ladder_goes_on_where_it_stood_once_the_carrier_is_back() {
        Night night = down(new Night(withLadder("ben", "ben")), "02:00").active("2026-11-25T02:10", TANK);
        up(night, "02:32").run("2026-11-25T02:45");

        assertThat(night.calls()).containsExactly("02:32:01 ben", "02:37:01 ben");
    }

    @Test
    void the_desks_with_the_worst_are_cleared_first() {
        var calico = new Site("calico", "Calico Draw", Fixtures.CHICAGO, "other");
        var box = new Box(
                "calico-box", "calico", Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO);
        var setup = new Setup(
                List.of(aSite(), calico),
                List.of(Fixtures.aBox(), box),
                List.of(),
                List.of(ana(), ben()),
                List.of(),
                List.of(ladder("night", "ben"), ladder("other", "ana")));
        Night night = down(down(new Night(setup), "mail", "02:00"), "02:00")
                .active("2026-11-25T02:10", TANK, Priority.LOW)
                .active("2026-11-25T02:11", new AlarmKey("calico", "separator", "high"), Priority.CRITICAL);
        up(night, "03:00").run("2026-11-25T03:00:05");

        assertThat(night.calls()).containsExactly("03:00:00 ana", "03:00:03 ben");
    }

    @Test
    void nobody_is_told_of_it_by_the_very_carrier_not_even_afterwards() {
        Night night = up(down(new Night(withLadder("ben")), "02:00"), "02:30").run("2026-11-25T04:00");

        assertThat(night.texts()).isEmpty();
        assertThat(night.picture().alarm(DOWN).state()).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
        assertThat(night.timeline()).anyMatch(line -> line.endsWith("exhausted: there was nobody to call"));
    }

    @Test
    void the_owner_can_give_the_gateway_a_name_and_a_ladder_of_its_own() {
        var own = new Site(Site.GATEWAY, "Office", Fixtures.CHICAGO, "own");
        var ladder = new Ladder(
                "own", Ladder.EndsWhen.NORMAL, List.of(new Rung(List.of("ben", "ana"), Duration.ofMinutes(30), 1)), 0);
        var setup = new Setup(
                List.of(aSite(), own),
                List.of(),
                List.of(),
                List.of(ana(), ben()),
                List.of(crew()),
                List.of(night(), ladder));

        Night night = down(new Night(setup), "mail", "02:00").run("2026-11-25T02:20");

        assertThat(night.calls()).containsExactly("02:01:00 ben", "02:01:00 ana");
        assertThat(night.texts().get(0).words()).startsWith("OFFICE MAIL DOWN");
    }

    @Test
    void a_bundle_that_waited_keeps_all_that_it_was_about_when_one_of_it_becomes_urgent() {
        var code = new AtomicInteger(10);
        var evening = new Simulation(theSetup(), new Escalator(Links.NONE, code::getAndIncrement));
        for (int i = 0; i < 4; i++) {
            report(evening, "20:58:00", "point-" + i, Priority.MEDIUM);
        }
        evening.run(Fixtures.at("2026-11-24T20:59:10"));
        Notice bundle = evening.picture().notices().stream()
                .filter(notice -> notice.callouts().size() == 2)
                .findFirst()
                .orElseThrow();
        for (String channel : List.of("sms-mail", "mail")) {
            evening.at(Fixtures.at("2026-11-24T20:59:30"), new Stimulus.Carrier(channel, true, "421 busy"));
            evening.at(Fixtures.at("2026-11-24T21:02:00"), new Stimulus.Carrier(channel, false, "it answers"));
        }
        evening.run(Fixtures.at("2026-11-24T21:03"));
        assertThat(evening.picture().notice(bundle.id()).orElseThrow().heldUntil())
                .contains(Fixtures.at("2026-11-25T06:00"));

        report(evening, "21:04:00", bundlePoint(evening, bundle), Priority.CRITICAL);
        evening.run(Fixtures.at("2026-11-24T21:04:30"));

        Notice sent = evening.picture().notice(bundle.id()).orElseThrow();
        assertThat(sent.state()).isEqualTo(NoticeState.QUEUED);
        assertThat(sent.callouts()).isEqualTo(bundle.callouts());
    }

    private static String bundlePoint(Simulation night, Notice bundle) {
        String callout = bundle.callouts().get(0);
        return night.picture()
                .callout(callout)
                .orElseThrow()
                .facts()
                .alarms()
                .get(0)
                .point();
    }

    private static void report(Simulation night, String clock, String point, Priority priority) {
        var at = Fixtures.at("2026-11-24T" + clock);
        var key = new AlarmKey("mesa-9", point, "high");
        var report =
                new Report(key, Optional.of("mesa-9-box"), true, Optional.of(priority), Measured.NOTHING, at, false);
        night.at(at, new Stimulus.Reported("mesa-9-box", List.of(report)));
    }

    @Test
    void another_setup_does_not_end_it() {
        Night night = down(new Night(theSetup()), "02:00")
                .setup("2026-11-25T02:03", withLadder("ana"))
                .run("2026-11-25T02:04");

        assertThat(night.picture().alarm(DOWN).state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(night.picture().calloutsAt("gateway")).hasSize(1);
    }

    private static Night down(Night night, String clock) {
        return down(night, "sms-mail", clock);
    }

    private static Night down(Night night, String channel, String clock) {
        return night.stimulus(
                "2026-11-25T" + clock, new Stimulus.Carrier(channel, true, "localhost:25 cannot be reached"));
    }

    private static Night up(Night night, String clock) {
        return night.stimulus(
                "2026-11-25T" + clock, new Stimulus.Carrier("sms-mail", false, "localhost:25 cannot be reached"));
    }

    /** One rung of five minutes for each of these. */
    private static Setup withLadder(String... calls) {
        return new Setup(
                List.of(aSite()),
                List.of(Fixtures.aBox()),
                List.of(Fixtures.waterTank(), Fixtures.injectionPump()),
                List.of(ana(), ben()),
                List.of(crew()),
                List.of(ladder("night", calls)));
    }

    private static Ladder ladder(String id, String... calls) {
        List<Rung> rungs = Stream.of(calls)
                .map(call -> new Rung(List.of(call), Duration.ofMinutes(5), 1))
                .toList();
        return new Ladder(id, Ladder.EndsWhen.ACKNOWLEDGED, rungs, 0);
    }
}
