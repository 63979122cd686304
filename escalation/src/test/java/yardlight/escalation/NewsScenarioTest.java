package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.TANK;
import static yardlight.escalation.NewsNight.calling;
import static yardlight.escalation.NewsNight.states;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.escalation.setup.Contact;
import yardlight.escalation.setup.Language;

/** What those who were called hear afterwards. */
class NewsScenarioTest {

    private static final AlarmKey DOOR = new AlarmKey("mesa-9", "door", "open");

    @Test
    void whose_alarm_is_over_by_itself_hears_that_there_is_nothing_to_do() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:40", TANK)
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly(
                        "02:42:00 ana MESA 9 WATER TANK HIGH-HIGH is back to normal 2:40 AM, after 27 min. No reply needed.");
    }

    @Test
    void as_long_as_an_answer_is_asked_for_it_says_how_to_give_one() {
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana", "ben"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:20", TANK)
                .run("2026-11-25T02:25");

        assertThat(night.news())
                .contains(
                        "02:22:00 ana MESA 9 WATER TANK HIGH-HIGH is back to normal 2:20 AM, after 7 min. Reply OK 47");
    }

    @Test
    void who_was_called_and_did_not_answer_hears_who_has_it_and_all_of_them_that_it_is_over() {
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana", "ben"))
                .answers("ben", Duration.ofMinutes(2))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:50", TANK)
                .run("2026-11-25T12:00");

        String over = "MESA 9 WATER TANK HIGH-HIGH is back to normal 2:50 AM, after 37 min. No reply needed.";
        assertThat(night.news())
                .containsExactly(
                        "02:22:00 ana Ben Tully has it since 2:20 AM: MESA 9 WATER TANK HIGH-HIGH",
                        "02:52:00 ana " + over,
                        "02:52:00 ben " + over);
    }

    @Test
    void whoever_answers_on_the_page_has_it_too() {
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, "ana", "ben"))
                .active("2026-11-25T02:13", TANK)
                .stimulus("2026-11-25T02:19", acknowledge(TANK))
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly(
                        "02:21:00 ana owner has it since 2:19 AM: MESA 9 WATER TANK HIGH-HIGH",
                        "02:21:00 ben owner has it since 2:19 AM: MESA 9 WATER TANK HIGH-HIGH");
    }

    @Test
    void who_never_had_a_text_about_it_hears_nothing() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana", "ben"))
                .active("2026-11-25T02:13", DOOR, Priority.MEDIUM)
                .normal("2026-11-25T02:20", DOOR)
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly(
                        "02:22:00 ben MESA 9 DOOR OPEN is back to normal 2:20 AM, after 7 min. No reply needed.");
    }

    @Test
    void an_alarm_that_is_there_again_is_not_said_to_be_over_and_once_it_is_that_is_said_once() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:14:30", TANK)
                .active("2026-11-25T02:15", TANK)
                .run("2026-11-25T02:17");
        assertThat(night.news()).isEmpty();

        night.normal("2026-11-25T02:17:30", TANK)
                .active("2026-11-25T02:17:40", TANK)
                .normal("2026-11-25T02:17:50", TANK)
                .run("2026-11-25T12:00");
        assertThat(night.news()).singleElement().asString().endsWith("after 4 min. No reply needed.");
    }

    @Test
    void nobody_is_called_because_it_did_not_get_out() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ben"))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:20", TANK)
                .run("2026-11-25T02:21");
        Notice news = NewsNight.news(night).get(0);
        night.stimulus("2026-11-25T02:22:30", new Stimulus.NoticeFate(news.id(), 0, Stimulus.Fate.REFUSED, "550 full"))
                .run("2026-11-25T12:00");

        assertThat(night.calls()).containsExactly("02:13:00 ben", "02:18:00 ben");
        assertThat(states(night)).containsExactly(NoticeState.REFUSED);
    }

    @Test
    void a_feed_that_is_back_says_how_long_it_was_off() {
        Night night = new Night(calling(Ladder.EndsWhen.NORMAL, "ana"))
                .stimulus("2026-11-25T02:13", beat(false))
                .stimulus("2026-11-25T04:23", beat(true))
                .run("2026-11-25T12:00");

        assertThat(night.news())
                .containsExactly(
                        "06:00:00 ana MESA 9 PUMP POWER OFF is back to normal 4:23 AM, was off 2 h 10 min. No reply needed.");
    }

    @Test
    void it_is_said_in_their_language() {
        Contact ana = Fixtures.ana();
        var spanish = new Contact(ana.id(), ana.name(), ana.zone(), Language.ES, ana.lines(), ana.quiet(), 20);
        Night night = new Night(calling(Ladder.EndsWhen.ACKNOWLEDGED, List.of(spanish, Fixtures.ben()), "ana", "ben"))
                .answers("ben", Duration.ofMinutes(2))
                .active("2026-11-25T02:13", TANK)
                .normal("2026-11-25T02:50", TANK)
                .run("2026-11-25T02:55");

        assertThat(night.news())
                .startsWith(
                        "02:22:00 ana Ben Tully se encarga desde 2:20 AM: MESA 9 WATER TANK ALTO-ALTO",
                        "02:52:00 ana MESA 9 WATER TANK ALTO-ALTO normal desde 2:50 AM, duro 37 min. No hace falta responder.");
    }

    private static Stimulus beat(boolean pump) {
        var said = new Heartbeat(
                Optional.empty(), Map.of("pump", pump), Optional.empty(), Optional.empty(), Optional.empty());
        return new Stimulus.Beat("mesa-9-box", said);
    }

    private static Stimulus acknowledge(AlarmKey key) {
        return new Stimulus.Acknowledge(key, "owner", "page", Optional.empty());
    }
}
