package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.ladder.Callout;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Point;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;

/** A feed that serves several sites goes off: each of them has its alarm and its callout, and people get one text. */
class SharedFeedScenarioTest {

    private static final String LOMA = "LOMA 4 NORTH POWER OFF 1:05 AM. Reply OK 47";
    private static final String PICO = "PICO 2 NORTH POWER OFF 1:05 AM. Reply OK 48";
    private static final String BOTH = "POWER OFF: 2 sites on north feed since 1:05 AM: LOMA 4, PICO 2. Reply ALL";

    private final List<Point> points = new ArrayList<>();
    private Ladder.EndsWhen ends = Ladder.EndsWhen.ACKNOWLEDGED;
    private final List<Site> sites = new ArrayList<>(List.of(site("loma-4", "night"), site("pico-2", "night")));

    @Test
    void what_is_off_within_a_moment_is_one_text_that_names_the_sites() {
        Night night = night().run("2026-11-25T01:06");

        assertThat(words(night)).containsExactly(BOTH);
        assertThat(night.calls()).containsExactly("01:05:20 ana");
        assertThat(alarm(night, "loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(alarm(night, "pico-2").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
    }

    @Test
    void the_alarm_is_there_at_once() {
        Night night = night().run("2026-11-25T01:05");

        assertThat(alarm(night, "loma-4").state()).isEqualTo(AlarmState.UNACKNOWLEDGED);
        assertThat(callout(night, "loma-4").kind()).isEqualTo(Callout.Kind.CALLING);
        assertThat(night.texts()).isEmpty();
        assertThat(night.timeline())
                .anyMatch(line ->
                        line.contains("held until 2026-11-25T07:05:20Z: other sites may have lost the same feed"));
    }

    @Test
    void an_answer_is_one_for_all_of_them() {
        Night night = night().answers("ana", Duration.ofMinutes(3)).run("2026-11-25T03:00");

        assertThat(night.calls()).containsExactly("01:05:20 ana");
        assertThat(alarm(night, "loma-4").acknowledgedBy()).contains("ana");
        assertThat(alarm(night, "pico-2").acknowledgedBy()).contains("ana");
    }

    @Test
    void the_ladder_goes_on_with_one_text_each_time() {
        Night night = night().run("2026-11-25T01:16");

        assertThat(night.calls()).containsExactly("01:05:20 ana", "01:10:20 ana", "01:15:20 ana");
        assertThat(words(night)).containsOnly(BOTH);
    }

    @Test
    void answered_at_one_site_it_goes_on_at_the_other() {
        Night night = night().run("2026-11-25T01:06");
        night.stimulus(
                        "2026-11-25T01:07",
                        new Stimulus.Acknowledge(alarm(night, "loma-4").key(), "ana", "page", Optional.empty()))
                .run("2026-11-25T01:11");

        assertThat(words(night)).containsExactly(BOTH, PICO);
    }

    @Test
    void a_site_that_loses_it_later_has_a_text_of_its_own() {
        Night night = new Night(setup());
        says(night, "01:05:00", "loma-4", Map.of("north", false));
        says(night, "01:05:50", "pico-2", Map.of("north", false));
        night.run("2026-11-25T01:07");

        assertThat(words(night)).containsExactly(LOMA, PICO);
        assertThat(night.calls()).containsExactly("01:05:20 ana", "01:06:10 ana");
    }

    @Test
    void a_feed_of_one_site_is_told_at_once() {
        sites.remove(1);
        Night night = new Night(setup());
        says(night, "01:05:00", "loma-4", Map.of("north", false));
        night.run("2026-11-25T01:05");

        assertThat(words(night)).containsExactly(LOMA);
    }

    @Test
    void so_is_one_that_others_share_who_have_other_people_to_be_told() {
        sites.set(1, site("pico-2", "day"));
        Night night = night().run("2026-11-25T01:06");

        assertThat(words(night)).containsExactly(LOMA, PICO);
        assertThat(night.calls()).containsExactly("01:05:00 ana", "01:05:09 ana");
    }

    @Test
    void so_is_what_overflows_tanks() {
        Night night = new Night(setup());
        says(night, "01:05:00", "loma-4", Map.of("pump", false, "wells", true));
        night.run("2026-11-25T01:05");

        assertThat(words(night))
                .containsExactly("LOMA 4 PUMP POWER OFF 1:05 AM, wells still on, tanks fill. Reply OK 47");
    }

    @Test
    void and_what_turns_out_to_overflow_them_within_the_moment() {
        Night night = new Night(setup());
        says(night, "01:05:00", "loma-4", Map.of("pump", false));
        says(night, "01:05:06", "loma-4", Map.of("pump", false, "wells", true));
        night.run("2026-11-25T01:05:06");

        assertThat(words(night))
                .containsExactly("LOMA 4 PUMP POWER OFF 1:05 AM, wells still on, tanks fill. Reply OK 47");
    }

    @Test
    void what_is_back_within_the_moment_calls_nobody_where_the_ladder_ends_with_it() {
        ends = Ladder.EndsWhen.NORMAL;
        Night night = night();
        says(night, "01:05:12", "loma-4", Map.of("north", true));
        says(night, "01:05:15", "pico-2", Map.of("north", true));
        night.run("2026-11-25T02:00");

        assertThat(night.calls()).isEmpty();
        assertThat(alarm(night, "loma-4").active()).isFalse();
    }

    @Test
    void and_back_at_the_first_site_only_the_other_is_told() {
        ends = Ladder.EndsWhen.NORMAL;
        Night night = night();
        says(night, "01:05:12", "loma-4", Map.of("north", true));
        night.answers("ana", Duration.ofMinutes(1)).run("2026-11-25T01:10");

        assertThat(words(night)).containsExactly(PICO);
    }

    @Test
    void put_aside_at_the_first_site_the_other_is_told() {
        Night night = night();
        night.stimulus(
                "2026-11-25T01:05:12",
                new Stimulus.Shelve(BoxAlarms.feedOff("loma-4", "north"), Duration.ofHours(1), "work", "ana"));
        night.run("2026-11-25T01:06");

        assertThat(words(night)).containsExactly(PICO);
        assertThat(alarm(night, "loma-4").state()).isEqualTo(AlarmState.SHELVED);
    }

    @Test
    void taken_out_of_service_at_the_first_site_the_other_is_told() {
        Night night = night();
        points.add(new Point(
                "power-north", "loma-4", "NORTH", Optional.empty(), Optional.empty(), Timing.PLAIN, Set.of(), false));
        night.setup("2026-11-25T01:05:12", setup()).run("2026-11-25T01:06");

        assertThat(words(night)).containsExactly(PICO);
    }

    @Test
    void with_the_first_site_no_longer_set_up_the_other_is_told() {
        Night night = night();
        sites.remove(0);
        night.setup("2026-11-25T01:05:12", setup()).run("2026-11-25T01:06");

        assertThat(words(night)).containsExactly(PICO);
    }

    @Test
    void back_and_not_answered_it_is_told_together_as_well() {
        Night night = night();
        says(night, "01:06:00", "loma-4", Map.of("north", true));
        says(night, "01:06:09", "pico-2", Map.of("north", true));
        night.run("2026-11-25T01:12");

        assertThat(words(night))
                .containsExactly(
                        BOTH,
                        "2 alarms at 2 sites. LOMA 4 NORTH POWER OFF 1:05 AM returned 1:06 AM;"
                                + " PICO 2 NORTH POWER OFF 1:05 AM returned 1:06 AM. Reply ALL");
    }

    /** Off at 1:05:00 and 1:05:09. */
    private Night night() {
        Night night = new Night(setup());
        says(night, "01:05:00", "loma-4", Map.of("north", false));
        says(night, "01:05:09", "pico-2", Map.of("north", false));
        return night;
    }

    private static void says(Night night, String time, String site, Map<String, Boolean> feeds) {
        var said = new Heartbeat(Optional.empty(), feeds, Optional.empty(), Optional.empty(), Optional.empty());
        night.stimulus("2026-11-25T" + time, new Stimulus.Beat(site + "-box", said));
    }

    private static List<String> words(Night night) {
        return night.texts().stream()
                .filter(text -> !text.isNews())
                .map(Night.Text::words)
                .toList();
    }

    private static Alarm alarm(Night night, String site) {
        return night.picture().alarm(BoxAlarms.feedOff(site, "north"));
    }

    private static Callout callout(Night night, String site) {
        return night.picture()
                .callout(alarm(night, site).callout().orElseThrow())
                .orElseThrow();
    }

    private static Site site(String id, String ladder) {
        return new Site(id, id.replace('-', ' '), ZoneId.of("America/Chicago"), ladder);
    }

    private Setup setup() {
        List<Box> boxes = sites.stream()
                .flatMap(site -> List.of("north", "pump").stream().map(feed -> box(site.id(), feed)))
                .toList();
        Ladder night = new Ladder("night", ends, Fixtures.night().rungs(), 1);
        Ladder day = new Ladder("day", ends, Fixtures.night().rungs(), 0);
        return new Setup(
                sites,
                boxes,
                points,
                List.of(Fixtures.ana(), Fixtures.ben()),
                List.of(Fixtures.crew()),
                List.of(night, day));
    }

    private static Box box(String site, String feed) {
        String id = feed.equals("north") ? site + "-box" : site + "-" + feed;
        return new Box(id, site, Optional.of(feed), Optional.empty(), true, Optional.empty(), Duration.ofMinutes(2));
    }
}
