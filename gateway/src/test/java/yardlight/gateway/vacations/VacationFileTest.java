package yardlight.gateway.vacations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.sentence.Sentence;
import yardlight.escalation.setup.Away;

/** When a calendar says that somebody is away: once, again and again, moved, cancelled, and not at all. */
class VacationFileTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant NOW = Instant.parse("2026-11-25T18:00:00Z");

    @Test
    void whole_days_are_those_of_the_person_and_end_before_the_last_date() {
        assertThat(away("DTSTART;VALUE=DATE:20261224", "DTEND;VALUE=DATE:20261227", "SUMMARY:Christmas\\, at home"))
                .containsExactly(new Away(
                        LocalDateTime.parse("2026-12-24T00:00"),
                        LocalDateTime.parse("2026-12-27T00:00"),
                        "Christmas, at home",
                        true));
    }

    @Test
    void a_day_without_an_end_is_that_day() {
        assertThat(times("DTSTART;VALUE=DATE:20261224")).containsExactly("2026-12-24T00:00/2026-12-25T00:00");
    }

    @Test
    void times_are_read_in_the_zone_of_the_person_whatever_zone_they_are_written_in() {
        assertThat(times("DTSTART:20261224T180000Z", "DTEND:20261224T200000Z"))
                .containsExactly("2026-12-24T12:00/2026-12-24T14:00");
        assertThat(times("DTSTART;TZID=America/New_York:20261224T180000", "DURATION:PT2H"))
                .containsExactly("2026-12-24T17:00/2026-12-24T19:00");
        assertThat(times("DTSTART:20261224T180000", "DTEND:20261224T200000"))
                .containsExactly("2026-12-24T18:00/2026-12-24T20:00");
    }

    @Test
    void what_recurs_is_there_each_time_but_where_it_is_taken_out() {
        assertThat(times(
                        "DTSTART;VALUE=DATE:20261204",
                        "DTEND;VALUE=DATE:20261206",
                        "RRULE:FREQ=WEEKLY;COUNT=4",
                        "EXDATE;VALUE=DATE:20261211"))
                .containsExactly(
                        "2026-12-04T00:00/2026-12-06T00:00",
                        "2026-12-18T00:00/2026-12-20T00:00",
                        "2026-12-25T00:00/2026-12-27T00:00");
    }

    @Test
    void one_that_was_moved_is_where_it_was_moved_to_and_not_where_it_was() {
        String master = event("UID:1", "DTSTART:20261201T150000Z", "DURATION:PT1H", "RRULE:FREQ=DAILY;COUNT=3");
        String moved = event("UID:1", "RECURRENCE-ID:20261202T150000Z", "DTSTART:20261202T200000Z", "DURATION:PT1H");

        assertThat(found(calendar(master + moved)).away())
                .extracting(one -> one.from().toString())
                .containsExactly("2026-12-01T09:00", "2026-12-02T14:00", "2026-12-03T09:00");
    }

    /** Sunday 2027-03-14 has a 9 AM like any other day; its instant is an hour earlier than the day before. */
    @Test
    void what_recurs_keeps_its_time_on_the_wall_when_the_clock_is_changed() {
        assertThat(times("DTSTART;TZID=America/Chicago:20270313T090000", "DURATION:PT1H", "RRULE:FREQ=DAILY;COUNT=2"))
                .containsExactly("2027-03-13T09:00/2027-03-13T10:00", "2027-03-14T09:00/2027-03-14T10:00");
    }

    @Test
    void what_has_begun_counts_and_what_is_over_or_far_away_does_not() {
        assertThat(times("DTSTART;VALUE=DATE:20261120", "DTEND;VALUE=DATE:20261130"))
                .hasSize(1);
        assertThat(times("DTSTART;VALUE=DATE:20261120", "DTEND;VALUE=DATE:20261125"))
                .isEmpty();
        assertThat(times("DTSTART;VALUE=DATE:20290101")).isEmpty();
    }

    @Test
    void what_is_cancelled_or_lasts_no_time_is_none() {
        assertThat(times("DTSTART;VALUE=DATE:20261224", "STATUS:CANCELLED")).isEmpty();
        assertThat(times("DTSTART:20261224T180000Z")).isEmpty();
        assertThat(times("SUMMARY:no start")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "hello", "<html></html>", "BEGIN:VCARD\r\nVERSION:4.0\r\nEND:VCARD\r\n"})
    void what_is_no_calendar_is_refused(String text) {
        assertThat(found(text).fault()).map(Sentence::code).contains("vacations.no-calendar");
    }

    @Test
    void what_would_never_end_or_be_too_much_is_refused() {
        assertThat(found(calendar(event("UID:1", "DTSTART:20261201T150000Z", "DURATION:PT1S", "RRULE:FREQ=SECONDLY")))
                        .fault())
                .map(Sentence::code)
                .contains("vacations.too-often");
        assertThat(found(calendar(event("UID:1", "DTSTART;VALUE=DATE:20261201", "RRULE:FREQ=DAILY")))
                        .fault())
                .map(Sentence::code)
                .contains("vacations.many");
        assertThat(found(calendar(event("UID:1", "DTSTART;VALUE=DATE:20261201").repeat(2_001)))
                        .fault())
                .map(Sentence::code)
                .contains("vacations.many-events");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            RRULE:FREQ=DAILY;BYHOUR=0,1,2;BYMINUTE=0,1,2;BYSECOND=0,1,2 | vacations.too-often
            RRULE:FREQ=YEARLY;BYSECOND=1                                | vacations.too-often
            EXRULE:FREQ=SECONDLY                                        | vacations.too-often
            EXRULE:FREQ=DAILY;BYMINUTE=1                                | vacations.too-often
            RRULE:FREQ=DAILY;COUNT=2000000000                           | vacations.too-elaborate
            EXRULE:FREQ=DAILY;COUNT=2000000000                          | vacations.too-elaborate
            RRULE:FREQ=YEARLY;BYDAY=MO,TU;BYSETPOS=-1                   | vacations.too-elaborate
            """)
    void rules_that_would_be_walked_through_for_ever_are_refused(String rule, String code) {
        String text = calendar(event("UID:1", "DTSTART:00010101T000000Z", "DURATION:PT1S", rule));

        assertThat(quickly(text).fault()).map(Sentence::code).contains(code);
    }

    @Test
    void an_event_with_such_a_rule_is_left_out_and_named_and_the_others_are_taken_over() {
        String elaborate =
                event("DTSTART;VALUE=DATE:20261201", "SUMMARY:Crew meeting", "RRULE:FREQ=MONTHLY;BYDAY=MO;BYSETPOS=-1");
        String hourly = event("DTSTART:20261201T000000Z", "DURATION:PT1S", "SUMMARY:Round", "RRULE:FREQ=HOURLY");
        String vacation = event("DTSTART;VALUE=DATE:20261224", "SUMMARY:Home");

        VacationFile.Found found = quickly(calendar(elaborate.repeat(2) + vacation + hourly));

        assertThat(found.fault()).isEmpty();
        assertThat(found.away()).extracting(Away::words).containsExactly("Home");
        assertThat(found.left()).containsExactly("Crew meeting", "Round");
    }

    @Test
    void a_rule_whose_every_time_is_taken_out_is_none_and_found_so_at_once() {
        assertThat(quickly(calendar(event("DTSTART;VALUE=DATE:20261201", "RRULE:FREQ=DAILY", "EXRULE:FREQ=DAILY")
                                .repeat(3)))
                        .away())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "RRULE:FREQ=DAILY;INTERVAL=2147483647",
                "RRULE:FREQ=YEARLY;INTERVAL=2147483647",
                "RRULE:FREQ=MONTHLY;INTERVAL=2147483647",
                "RRULE:FREQ=WEEKLY;INTERVAL=2147483647",
                "RRULE:FREQ=DAILY;BYMONTH=2;BYMONTHDAY=31",
                "RRULE:FREQ=DAILY;COUNT=5000"
            })
    void a_rule_that_hardly_ever_comes_is_found_so_at_once(String rule) {
        assertThat(quickly(calendar(event("DTSTART:00010101T000000Z", "DURATION:PT1H", rule)))
                        .fault())
                .isEmpty();
    }

    @Test
    void too_many_are_refused_before_the_next_event_is_looked_at() {
        String many = event("DTSTART;VALUE=DATE:20251201", "DTEND;VALUE=DATE:20301201", "RRULE:FREQ=DAILY");
        String next = event("DTSTART;VALUE=DATE:20261201", "RRULE:FREQ=SECONDLY");

        assertThat(quickly(calendar(many + next)).fault()).map(Sentence::code).contains("vacations.many");
        assertThat(quickly(calendar(many.repeat(2_000))).fault())
                .map(Sentence::code)
                .contains("vacations.many");
    }

    private static VacationFile.Found quickly(String text) {
        return assertTimeoutPreemptively(Duration.ofSeconds(10), () -> found(text));
    }

    private static List<Away> away(String... lines) {
        return found(calendar(event(lines))).away();
    }

    private static List<String> times(String... lines) {
        return away(lines).stream().map(one -> one.from() + "/" + one.to()).toList();
    }

    private static VacationFile.Found found(String text) {
        return new VacationFile(CHICAGO, NOW).read(text);
    }

    private static String calendar(String events) {
        return "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Example//EN\r\n" + events + "END:VCALENDAR\r\n";
    }

    private static String event(String... lines) {
        return "BEGIN:VEVENT\r\nDTSTAMP:20261101T000000Z\r\n" + String.join("\r\n", lines) + "\r\nEND:VEVENT\r\n";
    }
}
