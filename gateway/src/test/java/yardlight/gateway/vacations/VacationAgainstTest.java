package yardlight.gateway.vacations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import org.junit.jupiter.api.Test;
import yardlight.escalation.setup.Away;

/**
 * Rules and dates of examples in RFC 5545, written down from memory and with names of our own, and a calendar that ical4j 4.4.0
 * wrote: what we read of them is what the standard says they mean.
 */
class VacationAgainstTest {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final Instant AUGUST_1997 = Instant.parse("1997-08-25T00:00:00Z");

    /** RFC 5545 3.6.1, the anniversary: every year on November 2. */
    private static final String ANNIVERSARY = """
            BEGIN:VEVENT
            UID:anniversary@ranch.example
            DTSTAMP:19970901T130000Z
            DTSTART;VALUE=DATE:19971102
            SUMMARY:Anniversary of the ranch
            TRANSP:TRANSPARENT
            CLASS:CONFIDENTIAL
            CATEGORIES:ANNIVERSARY,PERSONAL,SPECIAL OCCASION
            RRULE:FREQ=YEARLY
            END:VEVENT
            """;

    /** RFC 5545 3.6.1, one of several days: from June 28 to July 8, 2007, both included. */
    private static final String FAIR = """
            BEGIN:VEVENT
            UID:fair@ranch.example
            DTSTAMP:20070423T123432Z
            DTSTART;VALUE=DATE:20070628
            DTEND;VALUE=DATE:20070709
            SUMMARY:Fair of the lower river
            TRANSP:TRANSPARENT
            END:VEVENT
            """;

    @Test
    void the_anniversary_comes_back_every_year() {
        assertThat(read(ANNIVERSARY, Instant.parse("2007-01-01T00:00:00Z")))
                .containsExactly(new Away(
                        LocalDateTime.parse("2007-11-02T00:00"),
                        LocalDateTime.parse("2007-11-03T00:00"),
                        "Anniversary of the ranch",
                        true));
    }

    @Test
    void the_fair_goes_up_to_the_day_before_its_end() {
        assertThat(read(FAIR, Instant.parse("2007-06-01T00:00:00Z")))
                .extracting(one -> one.from() + "/" + one.to())
                .containsExactly("2007-06-28T00:00/2007-07-09T00:00");
    }

    /** RFC 5545 3.8.5.3: daily for 10 occurrences, September 2 to 11 at 9:00 AM EDT. */
    @Test
    void daily_for_ten_occurrences() {
        assertThat(starts("RRULE:FREQ=DAILY;COUNT=10", "19970902T090000"))
                .hasSize(10)
                .startsWith("1997-09-02T09:00")
                .endsWith("1997-09-11T09:00");
    }

    /** RFC 5545 3.8.5.3: every other week on Monday, Wednesday and Friday until December 24, 1997, through the end of DST. */
    @Test
    void every_other_week_on_three_days_through_a_change_of_the_clock() {
        List<String> days =
                Arrays.asList(("09-01 09-03 09-05 09-15 09-17 09-19 09-29 10-01 10-03 10-13 10-15 10-17 10-27"
                                + " 10-29 10-31 11-10 11-12 11-14 11-24 11-26 11-28 12-08 12-10 12-12 12-22")
                        .split(" "));

        assertThat(starts(
                        "RRULE:FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR",
                        "19970901T090000"))
                .containsExactlyElementsOf(
                        days.stream().map(day -> "1997-" + day + "T09:00").toList());
    }

    /** Read and written again by ical4j, so that escaping and folding are its own. */
    @Test
    void what_ical4j_wrote_is_read_as_it_was_meant() throws Exception {
        String lengthened =
                FAIR.replace("of the lower river", "del río de abajo\\, con señal\\; " + "muy largo ".repeat(12));

        String written = new CalendarBuilder()
                .build(new StringReader(calendar(lengthened)))
                .toString();

        assertThat(new VacationFile(NEW_YORK, Instant.parse("2007-06-01T00:00:00Z"))
                        .read(written)
                        .away())
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.words()).startsWith("Fair del río de abajo, con señal; muy");
                    assertThat(one.to()).isEqualTo("2007-07-09T00:00");
                });
    }

    private static List<String> starts(String rule, String start) {
        String event = "BEGIN:VEVENT\nUID:1\nDTSTAMP:19970901T130000Z\nDTSTART;TZID=America/New_York:" + start
                + "\nDURATION:PT1H\n" + rule + "\nEND:VEVENT\n";
        return read(event, AUGUST_1997).stream()
                .map(one -> one.from().toString())
                .toList();
    }

    private static List<Away> read(String event, Instant now) {
        return new VacationFile(NEW_YORK, now).read(calendar(event)).away();
    }

    private static String calendar(String event) {
        return ("BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//Example//EN\n" + event + "END:VCALENDAR\n")
                .replace("\n", "\r\n");
    }
}
