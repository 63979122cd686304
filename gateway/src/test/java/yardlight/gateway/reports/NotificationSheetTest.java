package yardlight.gateway.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAttempt;
import yardlight.db.alarm.RecordedCallout;
import yardlight.db.alarm.RecordedNotice;
import yardlight.db.evidence.SignedHead;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Place;
import yardlight.escalation.notice.Notice;
import yardlight.escalation.notice.NoticeState;
import yardlight.gateway.account.Moment;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.page.Names;
import yardlight.gateway.page.Telling;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;

/** What stands on the sheet and in the table of a night that is made up here. */
class NotificationSheetTest {

    private static final Instant BEGAN = Fixtures.at("2026-11-25T02:13");
    private static final SignedHead HEAD =
            new SignedHead("2026-11-25T09:00:00.000Z", 1, "ab".repeat(44), "cd".repeat(32), "ef".repeat(64), 912);

    private final Alarm alarm = Fixtures.anAlarm();
    private final Answered answer = new Answered(
            BEGAN.plusSeconds(252), "ana", "Ana Ruelas", "acknowledged", Optional.of("link"), Optional.empty(), 61);

    private static RecordedNotice notice(int number, String contact, RecordedAttempt... attempts) {
        return notice(number, contact, Optional.empty(), attempts);
    }

    private static RecordedNotice notice(
            int number, String contact, Optional<Instant> heldUntil, RecordedAttempt... attempts) {
        var notice = new Notice(
                "c." + number,
                contact,
                List.of("c"),
                Priority.HIGH,
                "text",
                NoticeState.DELIVERED,
                BEGAN.plusSeconds(number),
                heldUntil,
                Optional.empty(),
                0);
        return new RecordedNotice(
                notice,
                Optional.of("mail"),
                Optional.of(BEGAN.plusSeconds(120)),
                Optional.of(BEGAN.plusSeconds(180)),
                List.of(attempts));
    }

    private static RecordedAttempt attempt(int seconds, String channel, String outcome, String detail) {
        return new RecordedAttempt(BEGAN.plusSeconds(seconds), channel, outcome, detail);
    }

    private static List<ToldRow> told(RecordedNotice... notices) {
        return told(BEGAN, notices);
    }

    private static List<ToldRow> told(Instant received, RecordedNotice... notices) {
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
                java.util.Set.of("ana"),
                java.util.Map.of());
        var callout = new RecordedCallout(new Callout.Answered(facts, Place.FOOT, "ana", BEGAN), List.of(notices));
        return new ToldRows(Fixtures.theSetup(), java.util.Map.of("c.1", List.of(51L, 53L)))
                .of(
                        List.of(callout),
                        Fixtures.anAlarm()
                                .draft()
                                .receivedAt(Optional.of(received))
                                .done());
    }

    private NotificationReport report(Tongue tongue, List<Answered> answers, List<ToldRow> told, int alarms) {
        var clock = new Clockface(Fixtures.CHICAGO, BEGAN.plusSeconds(7200), tongue.locale());
        var telling = new Telling(tongue, new Names(Fixtures.theSetup()), clock);
        var story = List.of(
                new Moment(BEGAN, "It began: 18.4 ft (limit 18.0)", false, Optional.of(48L)),
                new Moment(BEGAN.plusSeconds(1), "Ana Ruelas is called by mail", false, Optional.empty()));
        var all = new ArrayList<Occurred>();
        for (int i = 0; i < alarms; i++) {
            all.add(Occurred.of(alarm, telling, answers, told, alarms == 1 ? story : List.of()));
        }
        Optional<Instant> period = Optional.of(BEGAN).filter(at -> alarms != 1);
        return new NotificationReport(
                BEGAN.plusSeconds(7200),
                "rita",
                Optional.empty(),
                period,
                period.map(at -> at.plusSeconds(3600)),
                alarms == 1000,
                all,
                HEAD);
    }

    private static Printed printed(NotificationReport report, Tongue tongue, String picture) {
        return Printed.of(NotificationPdf.of(report, tongue, Fixtures::theSetup), picture);
    }

    @Test
    void a_bad_night_with_nine_tries_is_one_page_too() {
        List<ToldRow> told = told(
                notice(
                        1,
                        "ana",
                        attempt(
                                60,
                                "sms-mail",
                                "refused",
                                "550 <5755550101@txt.example> no such user here, see the manual"),
                        attempt(90, "mail", "deferred", "451 try later"),
                        attempt(120, "mail", "accepted", "250 taken as 17")),
                notice(2, "ben", attempt(121, "sms-mail", "accepted", "250 ok")),
                notice(3, "ana", attempt(122, "sms-mail", "unknown", "timed out")),
                notice(4, "ben", attempt(123, "sms-mail", "accepted", "250 ok")),
                notice(5, "ana", attempt(124, "sms-mail", "accepted", "250 ok")),
                notice(6, "ben", attempt(125, "sms-mail", "accepted", "250 ok")),
                notice(7, "ana", attempt(126, "mail", "accepted", "250 ok")));

        Printed sheet = printed(report(Tongues.ENGLISH, List.of(answer), told, 1), Tongues.ENGLISH, "bad-night");

        assertThat(sheet.pages()).isEqualTo(1);
        assertThat(sheet.flowing())
                .contains(
                        "From the event to the first person's knowledge: 4 min 12 s. Ana Ruelas acknowledged it by the link (log line 61).",
                        "First handed over to a carrier Nov 25, 2026, 2:15:00 AM CST 2026-11-25 08:15:00Z 2 min 0 s",
                        "First said to be delivered",
                        "***0101@txt.example",
                        "451 try later",
                        "log lines 51, 53",
                        "made by rita");
        assertThat(sheet.flowing()).doesNotContain("is called by mail", "5755550101");
        assertThat(sheet.attached()).isEqualTo(HEAD.json());
    }

    @Test
    void says_that_nobody_knew_and_that_nobody_was_told() {
        Printed sheet = printed(report(Tongues.ENGLISH, List.of(), List.of(), 1), Tongues.ENGLISH, "nobody");

        assertThat(sheet.flowing())
                .contains(
                        "By this record no person knew of it up to 2026-11-25 10:13:00Z.", "Nobody was sent anything");
    }

    @Test
    void a_report_of_a_period_has_its_alarms_one_after_the_other_and_says_when_there_are_more() {
        Printed sheet = printed(report(Tongues.SPANISH, List.of(answer), List.of(), 1000), Tongues.SPANISH, "period");

        assertThat(sheet.pages()).isGreaterThan(100);
        assertThat(sheet.flowing()).contains("Hubo más alarmas que estas: aquí están las 1,000 más nuevas.");
    }

    @Test
    void the_table_has_a_line_for_each_thing_and_ends_with_the_head() {
        List<ToldRow> told = told(notice(1, "ana", attempt(60, "sms-mail", "accepted", "=1+1")));

        List<String> lines = NotificationCsv.of(report(Tongues.ENGLISH, List.of(answer), told, 1))
                .lines()
                .toList();

        assertThat(lines.get(0)).startsWith("what,utc,local,zone,secondsAfterEvent,alarm,site");
        assertThat(lines)
                .extracting(line -> line.substring(0, line.indexOf(',')))
                .containsExactly(
                        "what",
                        "happened",
                        "received",
                        "call",
                        "delivered",
                        "first-known",
                        "acknowledged",
                        "note",
                        "log-head");
        assertThat(lines.get(3))
                .startsWith(
                        "call,2026-11-25T08:14:00Z,\"Nov 25, 2026, 2:14:00 AM CST\",America/Chicago,60,"
                                + "mesa-9.water-tank.high-high.1,mesa-9,Mesa 9,water-tank,high-high,high,ana,Ana Ruelas,sms-mail,call,accepted,'=1+1,51 53");
        assertThat(lines.get(8)).contains("\"{\"\"at\"\":\"\"2026-11-25T09:00:00.000Z\"\"");
    }

    /** It joined the callout of another alarm of its cause: what went before it came told nobody of it. */
    @Test
    void an_alarm_is_not_told_by_what_was_written_before_it_was_received() {
        RecordedNotice before = notice(1, "ana", attempt(2, "mail", "accepted", "250 ok"));
        RecordedNotice heldAndWrittenLater =
                notice(2, "ana", Optional.of(BEGAN.plusSeconds(90)), attempt(91, "mail", "accepted", "250 ok"));
        RecordedNotice with = notice(60, "ben", attempt(61, "mail", "accepted", "250 ok"));

        assertThat(told(BEGAN.plusSeconds(60), before, with))
                .extracting(ToldRow::contact)
                .containsExactly("ben");
        assertThat(told(BEGAN.plusSeconds(60), heldAndWrittenLater)).hasSize(1);
    }

    @Test
    void whoever_answered_the_worse_alarm_knew_of_this_one_and_the_sheet_says_how() {
        var along = new Answered(
                BEGAN.plusSeconds(252),
                "ana",
                "Ana Ruelas",
                "answered-with",
                Optional.empty(),
                Optional.of("overflow"),
                61);

        assertThat(printed(report(Tongues.ENGLISH, List.of(along), List.of(), 1), Tongues.ENGLISH, "along")
                        .flowing())
                .contains(
                        "knowledge: 4 min 12 s. Ana Ruelas answered overflow, which has the same cause and is no lesser alarm,"
                                + " and this one with it (log line 61).");
        assertThat(printed(report(Tongues.SPANISH, List.of(along), List.of(), 1), Tongues.SPANISH, "along-es")
                        .flowing())
                .contains("que tiene la misma causa y no es menor, y con ella esta (línea 61 del registro).");
        assertThat(NotificationCsv.of(report(Tongues.ENGLISH, List.of(along), List.of(), 1)))
                .contains(",ana,Ana Ruelas,,,answered-with,overflow,61");
    }
}
