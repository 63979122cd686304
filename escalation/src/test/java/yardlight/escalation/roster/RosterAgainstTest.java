package yardlight.escalation.roster;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.Iterator;
import java.util.List;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The handovers of a roster against the recurrence examples of RFC 5545 3.8.5.3 that have the shape of tours: one local
 * time, one length. All start on 1997-09-02 at 09:00 in New York and run over the change of the clock of 1997-10-26. The
 * instants come from another library, fed with the RFC's own RRULE text; the printed dates stand beside them.
 */
class RosterAgainstTest {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final LocalDateTime START = LocalDateTime.parse("1997-09-02T09:00");

    /** The rules as printed: the first three read, the last two read (2nd, quoted); instants recomputed by the library. */
    @ParameterizedTest
    @CsvSource({
        "P1D, FREQ=DAILY;UNTIL=19971224T000000Z, 113",
        "P7D, FREQ=WEEKLY;COUNT=10, 10",
        "P7D, FREQ=WEEKLY;UNTIL=19971224T000000Z, 17",
        "P10D, FREQ=DAILY;INTERVAL=10;COUNT=5, 5",
        "P14D, FREQ=WEEKLY;INTERVAL=2;WKST=SU, 60",
    })
    void handovers_are_the_instances_that_a_calendar_library_finds(String tour, String rule, int count) {
        List<Instant> instances = instances(rule, count);

        assertThat(instances).hasSize(count);
        assertThat(handovers(tour, count)).isEqualTo(instances);
    }

    /** "Daily until December 24, 1997": 113 instances, 9:00 EDT to October 25, 9:00 EST from October 26; read. */
    @Test
    void daily_tours_until_christmas_eve_hand_over_113_times_at_nine_by_the_wall() {
        Roster roster = roster("P1D");

        List<Instant> found = handovers("P1D", 113);

        assertThat(found.get(0)).isEqualTo(Instant.parse("1997-09-02T13:00:00Z"));
        assertThat(found.get(53)).isEqualTo(Instant.parse("1997-10-25T13:00:00Z"));
        assertThat(found.get(54)).isEqualTo(Instant.parse("1997-10-26T14:00:00Z"));
        assertThat(found.get(112)).isEqualTo(Instant.parse("1997-12-23T14:00:00Z"));
        assertThat(roster.nextHandover(found.get(112))).isAfter(Instant.parse("1997-12-24T00:00:00Z"));
    }

    /** "Weekly for 10 occurrences": September 2 to October 21 EDT, October 28 and November 4 EST; read. */
    @Test
    void weekly_tours_hand_over_on_the_ten_printed_dates() {
        assertThat(handovers("P7D", 10)).isEqualTo(nine("09-02 09-09 09-16 09-23 09-30 10-07 10-14 10-21 10-28 11-04"));
    }

    /** "Every other week - forever", the dates of 1997: read (2nd, quoted). */
    @Test
    void tours_of_a_fortnight_hand_over_on_the_printed_dates() {
        assertThat(handovers("P14D", 9)).isEqualTo(nine("09-02 09-16 09-30 10-14 10-28 11-11 11-25 12-09 12-23"));
    }

    private static List<Instant> nine(String days) {
        return Stream.of(days.split(" "))
                .map(day -> LocalDate.parse("1997-" + day)
                        .atTime(LocalTime.of(9, 0))
                        .atZone(NEW_YORK)
                        .toInstant())
                .toList();
    }

    private static List<Instant> handovers(String tour, int count) {
        Roster roster = roster(tour);
        var found = new ArrayList<Instant>();
        Instant now = Instant.parse("1997-01-01T00:00:00Z");
        while (found.size() < count) {
            now = roster.nextHandover(now);
            found.add(now);
        }
        return found;
    }

    private static Roster roster(String tour) {
        return new Roster("crew", NEW_YORK, START, Duration.parse(tour), List.of("ana", "ben"), List.of());
    }

    private static List<Instant> instances(String rule, int most) {
        String calendar = String.join(
                "\r\n",
                "BEGIN:VCALENDAR",
                "VERSION:2.0",
                "BEGIN:VEVENT",
                "DTSTART;TZID=/America/New_York:19970902T090000",
                "RRULE:" + rule,
                "END:VEVENT",
                "END:VCALENDAR");
        VEvent event = Biweekly.parse(calendar).first().getEvents().get(0);
        Iterator<Date> dates = event.getDateIterator(TimeZone.getTimeZone(NEW_YORK));
        var found = new ArrayList<Instant>();
        while (dates.hasNext() && found.size() < most + (rule.contains("COUNT") || rule.contains("UNTIL") ? 1 : 0)) {
            found.add(dates.next().toInstant());
        }
        return found;
    }
}
