package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.CHICAGO;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Priority;
import yardlight.escalation.quiet.QuietHours;
import yardlight.escalation.roster.Roster;

/**
 * Local times on the nights that change the clock. RFC 5545 3.3.5: a time that comes twice is the first of the two, as
 * here; a time in the gap is read with the offset before the gap, which moves it on by as far as the clock jumped. Here
 * it is the first moment after the gap instead: at most the length of the gap earlier than the RFC's, never reordered
 * with the times around it, and never skipped, as a recurrence would (3.3.10), leaving nobody on call.
 */
class TimeAgainstTest {

    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    /** RFC 5545 3.3.5, read and recomputed: New York 2007-11-04 01:30 is the first, 05:30Z. */
    @Test
    void a_time_that_comes_twice_is_the_first_as_in_the_rfc() {
        Instant published = Instant.parse("2007-11-04T05:30:00Z");

        assertThat(handover("2007-11-04T01:30")).isEqualTo(published);
        assertThat(quietEnd("2007-11-03T22:00", "01:30")).isEqualTo(published);
    }

    /** RFC 5545 3.3.5, read and recomputed: New York 2007-03-11 02:30 is 07:30Z there; the gap ends at 07:00Z. */
    @Test
    void a_time_in_the_gap_is_as_much_before_the_rfcs_as_it_lies_in_the_gap() {
        Instant published = Instant.parse("2007-03-11T07:30:00Z");
        Duration intoTheGap = Duration.ofMinutes(30);

        assertThat(handover("2007-03-11T02:30")).isEqualTo(published.minus(intoTheGap));
        assertThat(quietEnd("2007-03-10T22:00", "02:30")).isEqualTo(published.minus(intoTheGap));
    }

    /** IANA tz 2025b, recomputed: Chicago 2026, the gap ends at 1772956800, the hour comes again from 1793516400. */
    @Test
    void the_two_nights_of_2026_are_where_the_zone_data_has_them() {
        assertThat(handover(CHICAGO, "2026-03-08T02:00")).isEqualTo(Instant.ofEpochSecond(1772956800));
        assertThat(handover(CHICAGO, "2026-03-08T02:59")).isEqualTo(Instant.ofEpochSecond(1772956800));
        assertThat(handover(CHICAGO, "2026-11-01T01:00")).isEqualTo(Instant.ofEpochSecond(1793516400 - 3600));
        assertThat(handover(CHICAGO, "2026-11-01T02:00")).isEqualTo(Instant.ofEpochSecond(1793516400 + 3600));
    }

    /** Same zone data, recomputed: 22:00 to 06:00 is 8 h, but 7 h in the night of March 7 and 9 h in that of October 31. */
    @Test
    void quiet_hours_last_7_and_9_hours_on_the_two_nights() {
        assertThat(quiet("2026-03-06T22:00")).isEqualTo(Duration.ofHours(8));
        assertThat(quiet("2026-03-07T22:00")).isEqualTo(Duration.ofHours(7));
        assertThat(quiet("2026-03-08T22:00")).isEqualTo(Duration.ofHours(8));
        assertThat(quiet("2026-10-31T22:00")).isEqualTo(Duration.ofHours(9));
    }

    /**
     * RFC 5545 3.3.10, derived: daily 02:30 in Chicago from 2026-03-06 has 08:30Z, 08:30Z, none on the 8th, 07:30Z,
     * 07:30Z. The handovers are the same instants and one more, where the RFC has none: 08:00Z on the 8th.
     */
    @Test
    void a_daily_handover_has_the_rfcs_instants_and_one_for_the_night_it_leaves_out() {
        Roster roster = roster(CHICAGO, "2026-03-06T02:30");
        var found = new ArrayList<Instant>();
        for (Instant now = at("2026-03-06T00:00"); found.size() < 5; ) {
            now = roster.nextHandover(now);
            found.add(now);
        }

        assertThat(found)
                .containsExactly(
                        Instant.parse("2026-03-06T08:30:00Z"),
                        Instant.parse("2026-03-07T08:30:00Z"),
                        Instant.parse("2026-03-08T08:00:00Z"),
                        Instant.parse("2026-03-09T07:30:00Z"),
                        Instant.parse("2026-03-10T07:30:00Z"));
    }

    private static Instant handover(String local) {
        return handover(NEW_YORK, local);
    }

    private static Instant handover(ZoneId zone, String local) {
        return roster(zone, local).nextHandover(Instant.EPOCH);
    }

    private static Roster roster(ZoneId zone, String start) {
        return new Roster(
                "crew", zone, LocalDateTime.parse(start), Duration.ofDays(1), List.of("ana", "ben"), List.of());
    }

    private static Instant quietEnd(String start, String to) {
        Instant evening = LocalDateTime.parse(start).atZone(NEW_YORK).toInstant();
        return QuietHours.daily(LocalTime.of(22, 0), LocalTime.parse(to), NEW_YORK, Priority.HIGH)
                .endAfter(evening);
    }

    private static Duration quiet(String start) {
        var hours = QuietHours.daily(LocalTime.of(22, 0), LocalTime.of(6, 0), CHICAGO, Priority.HIGH);
        return Duration.between(at(start), hours.endAfter(at(start)));
    }
}
