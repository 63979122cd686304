package yardlight.gateway.feed;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.TemporalAccessor;
import java.util.Date;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStart;
import org.junit.jupiter.api.Test;
import yardlight.escalation.Fixtures;

/** What is written is read by ical4j 4.4.0, which did not write it, and held against RFC 5545 and RFC 7986 section by section. */
class CalendarAgainstTest {

    private static final ICalendar ANA = TurnCalendarTest.calendar(Fixtures.theSetup(), 7, "ana");

    /** RFC 5545 3.1: lines end with CRLF and have at most 75 octets; 3.4, 3.6: the frame; 3.7.3, 3.7.4: what must be there. */
    @Test
    void lines_and_frame_are_those_of_the_standard() {
        String text = CalendarText.of(ANA);

        assertThat(text).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:").endsWith("END:VCALENDAR\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }

    /** RFC 5545 3.3.11: backslash, semicolon, comma and line break are escaped; 3.1: no character is cut in two. */
    @Test
    void any_text_is_read_as_it_was_written() throws Exception {
        String hard = "Año nuevo, señal; \\ raya\nsegunda línea: " + "ñandú ".repeat(40) + "\uD83D\uDD26".repeat(30);
        var calendar = new ICalendar();
        var event = new VEvent();
        event.setUid("1");
        event.setDateStart(Date.from(Instant.parse("2026-11-25T08:00:00Z")), true);
        event.setSummary(hard);
        calendar.addEvent(event);

        String text = CalendarText.of(calendar);

        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        assertThat(value(read(text).getComponents().get(0), Property.SUMMARY)).isEqualTo(hard);
    }

    /** RFC 5545 3.6.1, 3.8.2.2, 3.8.2.4, 3.8.4.7, 3.8.7.2, 3.8.7.4: the events, in UTC by form 2 of 3.3.5. */
    @Test
    void every_event_is_read_with_its_times_id_and_sequence() throws Exception {
        List<CalendarComponent> read = read(CalendarText.of(ANA)).getComponents();

        assertThat(read).hasSameSizeAs(ANA.getEvents()).hasSizeGreaterThan(25);
        for (int i = 0; i < read.size(); i++) {
            VEvent written = ANA.getEvents().get(i);
            CalendarComponent event = read.get(i);
            assertThat(value(event, Property.UID)).isEqualTo(written.getUid().getValue());
            assertThat(value(event, Property.SEQUENCE)).isEqualTo("7");
            assertThat(value(event, Property.DTSTAMP)).isEqualTo("20261125T180000Z");
            assertThat(value(event, Property.TRANSP)).isEqualTo("TRANSPARENT");
            assertThat(value(event, Property.CLASS)).isEqualTo("PRIVATE");
            DtStart<?> start = event.getRequiredProperty(Property.DTSTART);
            DtEnd<?> end = event.getRequiredProperty(Property.DTEND);
            assertThat(instant(start.getDate()))
                    .isEqualTo(written.getDateStart().getValue().toInstant());
            assertThat(instant(end.getDate()))
                    .isEqualTo(written.getDateEnd().getValue().toInstant());
        }
    }

    /** RFC 7986 5.1, 5.2, 5.3, 5.4, 5.7: name, description, id, last change and how often to come again. */
    @Test
    void the_calendar_says_what_it_is_and_how_often_to_come_again() throws Exception {
        Calendar read = read(CalendarText.of(ANA));

        assertThat(read.<Property>getRequiredProperty("NAME").getValue()).isEqualTo("Turns of Ana Ruelas");
        assertThat(read.<Property>getRequiredProperty("DESCRIPTION").getValue())
                .startsWith("When Ana Ruelas is on call");
        assertThat(read.<Property>getRequiredProperty("UID").getValue()).hasSize(36);
        assertThat(read.<Property>getRequiredProperty("LAST-MODIFIED").getValue())
                .isEqualTo("20261125T180000Z");
        assertThat(read.<Property>getRequiredProperty("REFRESH-INTERVAL").getValue())
                .isEqualTo("PT1H");
        assertThat(CalendarText.of(ANA)).contains("\r\nREFRESH-INTERVAL;VALUE=DURATION:PT1H\r\n");
    }

    private static Calendar read(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static String value(CalendarComponent component, String property) {
        return component.<Property>getRequiredProperty(property).getValue();
    }

    private static Instant instant(Object at) {
        return Instant.from((TemporalAccessor) at);
    }
}
