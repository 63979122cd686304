package yardlight.gateway.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAttempt;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.db.log.LogLine;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongues;

class StoryTest {

    private static final Instant BEGAN = Fixtures.at("2026-11-25T02:13");

    private final Alarm alarm = Fixtures.anAlarm();

    private List<String> told(List<LogLine> log, List<RecordedCallout> callouts) {
        var clock = new Clockface(Fixtures.CHICAGO, Fixtures.at("2026-11-25T02:30"), Tongues.ENGLISH.locale());
        var telling = new Telling(Tongues.ENGLISH, new Names(Fixtures.theSetup()), clock);
        return new Story(telling)
                .of(alarm, log, callouts).stream()
                        .map(line -> clock.read(line.at()) + " " + line.words())
                        .toList();
    }

    private LogLine line(int minutes, String what, String words) {
        return new LogLine(
                1, BEGAN.plusSeconds(60L * minutes), what, Map.of("site", "mesa-9", "alarm", alarm.id()), words);
    }

    @Test
    void goes_in_order_from_the_report_over_the_calls_to_the_answer() {
        List<LogLine> log = List.of(
                line(0, "event", "water-tank/high-high active 18.4 ft (limit 18.0): occurred"),
                line(0, "alarm", "water-tank/high-high is now unacknowledged"),
                line(0, "callout", "callout 47 calls rung 1, round 1"),
                line(4, "answer", "water-tank/high-high acknowledged by ana by link, is now acknowledged"),
                line(4, "callout", "callout 47 answered by ana"));

        assertThat(told(log, List.of(call())))
                .containsExactly(
                        "2:13 AM It began: 18.4 ft (limit 18.0)",
                        "2:13 AM The ladder calls rung 1, round 1",
                        "2:13 AM Ana Ruelas is called by mail",
                        "2:14 AM Ana Ruelas: refused by sms-mail, in the carrier's words: 550 no such number",
                        "2:15 AM Ana Ruelas: sent by mail",
                        "2:16 AM Ana Ruelas: it arrived by mail",
                        "2:17 AM Ana Ruelas has it, answered by the link");
    }

    @Test
    void leaves_out_a_delay_that_led_to_nothing_and_keeps_the_last() {
        List<LogLine> log = List.of(
                stray("water-tank/high-high active 17 ft: delayed", -20),
                stray("water-tank/high-high active 18 ft: delayed", -1),
                line(0, "alarm", "water-tank/high-high is now unacknowledged"));

        assertThat(told(log, List.of()))
                .containsExactly("2:12 AM Reported: 18 ft; its delay began", "2:13 AM In alarm, and nobody has it");
    }

    @Test
    void keeps_the_words_of_the_log_where_it_has_no_others() {
        assertThat(told(List.of(line(1, "alarm", "something new")), List.of()))
                .containsExactly("2:14 AM something new");
    }

    private static LogLine stray(String words, int minutes) {
        return new LogLine(
                1,
                BEGAN.plusSeconds(60L * minutes),
                "event",
                Map.of("site", "mesa-9", "alarm", "mesa-9.water-tank.high-high.0"),
                words);
    }

    private static RecordedCallout call() {
        var facts = new Callout.Facts(
                "c",
                47,
                "mesa-9",
                "night",
                Priority.HIGH,
                List.of(Fixtures.TANK),
                BEGAN,
                1,
                1,
                Set.of("ana"),
                Map.of());
        var notice = new Notice(
                "c.1",
                "ana",
                List.of("c"),
                Priority.HIGH,
                "text",
                NoticeState.DELIVERED,
                BEGAN,
                Optional.empty(),
                Optional.empty(),
                1);
        var refused = new RecordedAttempt(BEGAN.plusSeconds(60), "sms-mail", "refused", "550 no such number");
        var taken = new RecordedAttempt(BEGAN.plusSeconds(120), "mail", "accepted", "250 ok");
        var recorded = new RecordedNotice(
                notice,
                Optional.of("mail"),
                Optional.of(BEGAN.plusSeconds(120)),
                Optional.of(BEGAN.plusSeconds(180)),
                List.of(refused, taken));
        return new RecordedCallout(new Callout.Answered(facts, Place.FOOT, "ana", BEGAN), List.of(recorded));
    }
}
