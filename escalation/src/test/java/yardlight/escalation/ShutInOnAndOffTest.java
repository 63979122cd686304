package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.shutin.RequestState;
import yardlight.escalation.shutin.Terms;

/** Nothing is asked before the owner has turned it on, for exactly these settings; and nothing stays open once it is off. */
class ShutInOnAndOffTest {

    private static final AlarmKey TANK = new AlarmKey("mesa-9", "water-tank", "overflow");

    @Test
    void a_setup_alone_turns_nothing_on() {
        ShutInNight night = ShutInNight.off(ShutInNight.BY_BOX);

        assertThat(night.ask("2026-11-28T02:10"))
                .isEqualTo(new Answer.Refusal("asking to shut in is not turned on for mesa-9"));
        assertThat(night.beat("2026-11-28T02:11")).isInstanceOf(Answer.Done.class);
    }

    @Test
    void other_settings_than_those_that_were_read_are_not_turned_on() {
        ShutInNight night = ShutInNight.off(ShutInNight.BY_BOX);

        assertThat(night.say("2026-11-28T02:00", new ShutInSaid.TurnedOn(ShutInNight.BY_RELAY.words(), "owner")))
                .isInstanceOf(Answer.Refusal.class);
    }

    @Test
    void changed_settings_turn_it_off_and_the_old_ones_do_not_turn_it_on_again() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);

        night.play.setup("2026-11-28T02:05", ShutInNight.setup(ShutInNight.BY_RELAY));
        assertThat(night.ask("2026-11-28T02:06")).isInstanceOf(Answer.Refusal.class);
        night.play.setup("2026-11-28T02:07", ShutInNight.setup(ShutInNight.BY_BOX));

        assertThat(night.ask("2026-11-28T02:08")).isInstanceOf(Answer.Refusal.class);
        assertThat(night.play.log)
                .contains("asking to shut in is off now: the site's settings for it were changed or taken away");
    }

    @Test
    void a_change_of_something_else_leaves_it_on() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);

        night.play.setup("2026-11-28T02:05", ShutInNight.setup(ShutInNight.BY_BOX));

        assertThat(night.ask("2026-11-28T02:06")).isInstanceOf(Answer.Asked.class);
    }

    @Test
    void who_turns_it_off_takes_an_open_request_back_and_people_are_told() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);
        night.ask("2026-11-28T02:10");

        night.say("2026-11-28T02:11", new ShutInSaid.TurnedOff("owner"));

        assertThat(night.request().state()).isEqualTo(RequestState.WITHDRAWN);
        assertThat(night.beat("2026-11-28T02:12")).isInstanceOf(Answer.Done.class);
        assertThat(night.told())
                .contains("MESA 9 request to shut in taken back 2:11 AM. If the site had it, it may still be done.");
    }

    @Test
    void a_site_that_is_taken_out_of_the_setup_takes_its_request_and_its_consent_along() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);
        night.ask("2026-11-28T02:10");
        Setup with = night.play.picture.setup();
        var without = new Setup(
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(with.contacts().values()),
                List.copyOf(with.rosters().values()),
                List.copyOf(with.ladders().values()));

        night.play.setup("2026-11-28T02:11", without);

        assertThat(night.request().state()).isEqualTo(RequestState.WITHDRAWN);
        assertThat(night.told()).anyMatch(text -> text.contains("taken back 8:11 AM"));
        night.play.setup("2026-11-28T02:12", with);
        assertThat(night.ask("2026-11-28T02:13")).isInstanceOf(Answer.Refusal.class);
    }

    @Test
    void a_text_alone_asks_for_nothing_and_the_code_from_the_same_line_does() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);
        night.say("2026-11-28T02:10", new ShutInSaid.Wished("ben", "+15755550102", 482_913));
        assertThat(night.play.picture.standing("mesa-9").request()).isEmpty();

        Answer answer = night.say("2026-11-28T02:12", new ShutInSaid.Code("ben", "+15755550102", 482_913));

        assertThat(answer).isInstanceOf(Answer.Asked.class);
        assertThat(night.play.log).anyMatch(line -> line.contains("asked for by ben by text; goes to box mesa-9-box"));
    }

    @Test
    void a_wrong_code_is_the_end_of_the_wish() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);
        night.say("2026-11-28T02:10", new ShutInSaid.Wished("ben", "+15755550102", 482_913));

        night.say("2026-11-28T02:11", new ShutInSaid.Code("ben", "+15755550102", 482_914));
        night.say("2026-11-28T02:12", new ShutInSaid.Code("ben", "+15755550102", 482_913));

        assertThat(night.play.picture.standing("mesa-9").request()).isEmpty();
    }

    @Test
    void a_code_that_comes_too_late_does_nothing() {
        ShutInNight night = ShutInNight.on(ShutInNight.BY_BOX);
        night.say("2026-11-28T02:10", new ShutInSaid.Wished("ben", "+15755550102", 482_913));

        night.say("2026-11-28T02:15", new ShutInSaid.Code("ben", "+15755550102", 482_913));

        assertThat(night.play.picture.standing("mesa-9").request()).isEmpty();
    }

    @Test
    void the_last_call_asks_once_and_not_again_within_the_hour() {
        Terms usual = ShutInNight.BY_BOX;
        ShutInNight night = ShutInNight.on(new Terms(
                usual.way(),
                usual.through(),
                usual.point(),
                usual.done(),
                usual.refused(),
                usual.expires(),
                usual.confirmWithin(),
                Optional.of(Duration.ofMinutes(30))));

        assertThat(lastCall(night, "2026-11-28T02:10", Duration.ofMinutes(30))).isEmpty();
        assertThat(lastCall(night, "2026-11-28T02:11", Duration.ofMinutes(29)))
                .anyMatch(
                        words -> words.contains("asked for by last call: the time to overflow of water-tank/overflow"));
        night.due("2026-11-28T02:30");
        assertThat(lastCall(night, "2026-11-28T03:10:59", Duration.ofMinutes(1)))
                .isEmpty();
        assertThat(lastCall(night, "2026-11-28T03:11", Duration.ofMinutes(1))).isNotEmpty();
    }

    /** As a detector would, in its own decision. */
    private static List<String> lastCall(ShutInNight night, String local, Duration left) {
        var draft = new Draft(night.play.picture, Fixtures.at(local));
        var notices = new Notices(draft, yardlight.escalation.wording.Links.NONE, Optional.empty());
        new ShutIns(draft, notices).lastCall(TANK, left);
        Decision decision = draft.decision(new Answer.Done());
        night.play.picture.apply(decision.changes());
        return decision.entries().stream().map(Entry::words).toList();
    }
}
