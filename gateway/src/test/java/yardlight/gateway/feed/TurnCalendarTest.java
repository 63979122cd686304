package yardlight.gateway.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.ResourceBundleMessageSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.setup.Setup;
import yardlight.gateway.page.Tongue;

/** What stands in a person's calendar: each part of a tour once, and the same part by the same id whatever happens to it. */
class TurnCalendarTest {

    static final Instant NOW = at("2026-11-25T12:00");
    private static final byte[] SEED = "a gateway".getBytes(StandardCharsets.UTF_8);

    private final Setup setup = Fixtures.theSetup();

    /** Hour by hour what the roster says, through both changes of the clock. */
    @Test
    void has_a_person_on_call_exactly_when_the_roster_has() {
        List<VEvent> events = calendar(setup, 3, "ana").getEvents();

        for (Instant hour = NOW; hour.isBefore(NOW.plus(TurnCalendar.AHEAD)); hour = hour.plus(Duration.ofHours(1))) {
            Instant at = hour;
            boolean shown = events.stream().anyMatch(event -> covers(event, at));
            assertThat(shown)
                    .as(at.toString())
                    .isEqualTo(setup.peopleBehind("roster:crew", at).contains("ana"));
        }
    }

    @Test
    void is_the_same_to_the_letter_until_the_setup_is_edited() {
        String first = CalendarText.of(calendar(setup, 3, "ana"));

        assertThat(CalendarText.of(calendar(setup, 3, "ana"))).isEqualTo(first);
    }

    /** Ana's week is cut by a swap: its beginning stays the event that it was, with another end and a higher sequence. */
    @Test
    void a_swap_changes_an_event_and_adds_one_and_leaves_the_rest_what_they_were() {
        var relief =
                new Relief(LocalDateTime.parse("2026-11-27T19:00"), LocalDateTime.parse("2026-11-28T07:00"), "ben");
        Map<String, VEvent> before = byId(calendar(setup, 3, "ana"));

        Map<String, VEvent> after = byId(calendar(setup.withRelief("crew", relief), 4, "ana"));

        assertThat(after.keySet()).containsAll(before.keySet()).hasSize(before.size() + 1);
        VEvent week = before.values().stream()
                .filter(event -> covers(event, NOW))
                .findFirst()
                .orElseThrow();
        VEvent cut = after.get(week.getUid().getValue());
        assertThat(cut.getDateEnd().getValue().toInstant()).isEqualTo(at("2026-11-27T19:00"));
        assertThat(cut.getSequence().getValue())
                .isEqualTo(4)
                .isGreaterThan(week.getSequence().getValue());
        assertThat(before)
                .allSatisfy(
                        (id, event) -> assertThat(after.get(id).getDateStart().getValue())
                                .isEqualTo(event.getDateStart().getValue()));
    }

    @Test
    void the_one_who_stands_in_reads_for_whom() {
        VEvent christmas = calendar(setup, 3, "ben").getEvents().stream()
                .filter(event -> covers(event, at("2026-12-24T12:00")))
                .findFirst()
                .orElseThrow();

        assertThat(christmas.getSummary().getValue()).isEqualTo("On call: crew");
        assertThat(christmas.getDescription().getValue()).isEqualTo("In the place of Ana Ruelas");
    }

    @Test
    void ids_say_nothing_and_are_those_of_one_gateway() {
        var elsewhere = new TurnCalendar(setup, tongue(), new byte[16], new TurnCalendar.Edited(3, NOW));

        ICalendar other = elsewhere.of(setup.contacts().get("ana"), NOW);

        assertThat(byId(calendar(setup, 3, "ana")))
                .doesNotContainKeys(byId(other).keySet().toArray(String[]::new));
        assertThat(byId(other).keySet()).allMatch(id -> id.matches("[0-9a-f-]{36}"));
    }

    private static boolean covers(VEvent event, Instant at) {
        return !at.isBefore(event.getDateStart().getValue().toInstant())
                && at.isBefore(event.getDateEnd().getValue().toInstant());
    }

    private static Map<String, VEvent> byId(ICalendar calendar) {
        return calendar.getEvents().stream()
                .collect(Collectors.toMap(event -> event.getUid().getValue(), event -> event));
    }

    static ICalendar calendar(Setup setup, int version, String contact) {
        return new TurnCalendar(setup, tongue(), SEED, new TurnCalendar.Edited(version, NOW))
                .of(setup.contacts().get(contact), NOW);
    }

    static Tongue tongue() {
        var words = new ResourceBundleMessageSource();
        words.setBasename("words/feed");
        words.setDefaultEncoding("UTF-8");
        return new Tongue(words, Locale.ENGLISH);
    }
}
