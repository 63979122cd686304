package yardlight.gateway.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.db.alarm.RecordedCallout;
import yardlight.escalation.Fixtures;
import yardlight.escalation.Stimulus;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;
import yardlight.escalation.setup.Line;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Stop;
import yardlight.gateway.FakeLane;

class WishTest {

    private static final String ANA = "5755550101@txt.example";
    private static final Waiting NOTHING = Waiting.of(List.of());

    private final FakeLane lane = new FakeLane();
    private final Set<AlarmKey> stops = new HashSet<>();
    private Setup setup = Fixtures.theSetup();

    @Test
    void stop_stops_the_line_that_it_came_from_and_says_that_the_others_are_used() {
        Replies.Outcome outcome = from("+1 575 555 0101").stop(lane);

        assertThat(lane.decided)
                .containsExactly(new Stimulus.Stopped("ana", ANA, true, "Ana Ruelas wrote STOP from +1 575 555 0101"));
        assertThat(outcome.answer())
                .isEqualTo(
                        "Nothing more comes here. Your other lines are still used. To be called here again send START.");
        assertThat(outcome.acknowledged()).isEmpty();
    }

    @Test
    void stop_by_mail_stops_the_mail() {
        from("Ana@mesa.example").stop(lane);

        assertThat(lane.decided)
                .containsExactly(new Stimulus.Stopped(
                        "ana", "ana@mesa.example", true, "Ana Ruelas wrote STOP from ana@mesa.example"));
    }

    @Test
    void the_last_line_hears_that_it_was_the_last() {
        stops.add(Stop.key("ana", "ana@mesa.example"));

        assertThat(from("5755550101").stop(lane).answer())
                .isEqualTo(
                        "Nothing more comes here. You are called by no other line. To be called here again send START.");
    }

    @Test
    void stop_is_answered_once() {
        stops.add(Stop.key("ana", ANA));

        assertThat(from("5755550101").stop(lane).answer()).isEmpty();
        assertThat(from("5755550101").stopped()).isTrue();
        assertThat(from("ana@mesa.example").stopped()).isFalse();
    }

    @Test
    void a_line_that_two_share_is_stopped_for_both() {
        var twin = new Contact(
                "cleo",
                "Cleo",
                Fixtures.CHICAGO,
                Language.EN,
                List.of(new Line("smpp", "+15755550101")),
                List.of(),
                20);
        setup = new Setup(List.of(), List.of(), List.of(), List.of(Fixtures.ana(), twin), List.of(), List.of());

        from("+15755550101").stop(lane);

        assertThat(lane.decided)
                .extracting(said -> ((Stimulus.Stopped) said).contact() + " " + ((Stimulus.Stopped) said).address())
                .containsExactly("ana " + ANA, "cleo +15755550101");
    }

    @Test
    void start_takes_it_up_again_and_says_what_was_missed() {
        stops.add(Stop.key("ana", ANA));

        Replies.Outcome outcome = from("5755550101").start(lane, Waiting.of(List.of(waits(Fixtures.TANK))));

        assertThat(lane.decided)
                .containsExactly(new Stimulus.Stopped("ana", ANA, false, "Ana Ruelas wrote START from 5755550101"));
        assertThat(outcome.answer()).isEqualTo("You are called here again. Waiting for an answer: 1. Send STATUS.");
    }

    @Test
    void the_stop_itself_was_not_missed() {
        stops.add(Stop.key("ana", ANA));

        assertThat(from("5755550101")
                        .start(lane, Waiting.of(List.of(waits(Stop.key("ana", ANA)))))
                        .answer())
                .isEqualTo("You are called here again.");
    }

    @Test
    void start_without_a_stop_says_so() {
        assertThat(from("5755550101").start(lane, NOTHING).answer())
                .isEqualTo("You are called here. To hear nothing more here send STOP.");
    }

    private Wish from(String address) {
        var sender = new Sender(address);
        return new Wish(sender, sender.among(setup), stops, Sentences.in(Language.EN));
    }

    private static RecordedAlarm waits(AlarmKey key) {
        var facts = new Callout.Facts(
                "c-1",
                47,
                key.site(),
                "night",
                Priority.HIGH,
                List.of(key),
                Fixtures.at("2026-11-25T02:13"),
                1,
                1,
                Set.of("ben"),
                Map.of());
        return new RecordedAlarm(
                Alarm.normal(key)
                        .draft()
                        .state(AlarmState.UNACKNOWLEDGED)
                        .occurrence(1)
                        .done(),
                Optional.of(new RecordedCallout(
                        new Callout.Calling(facts, Place.FOOT, Fixtures.at("2026-11-25T02:18")), List.of())));
    }
}
