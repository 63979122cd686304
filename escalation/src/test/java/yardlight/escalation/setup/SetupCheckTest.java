package yardlight.escalation.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static yardlight.escalation.Fixtures.CHICAGO;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Timing;
import yardlight.escalation.ladder.Ladder;
import yardlight.escalation.ladder.Rung;
import yardlight.escalation.roster.Relief;
import yardlight.escalation.roster.Roster;
import yardlight.escalation.sentence.Sentence;

class SetupCheckTest {

    private final SetupCheck check = new SetupCheck(Set.of("sms-mail", "mail"));

    private final List<Site> sites = new ArrayList<>(List.of(Fixtures.aSite()));
    private final List<Box> boxes = new ArrayList<>(List.of(Fixtures.aBox()));
    private final List<Point> points = new ArrayList<>(List.of(Fixtures.waterTank(), Fixtures.injectionPump()));
    private final List<Contact> contacts = new ArrayList<>(List.of(Fixtures.ana(), Fixtures.ben()));
    private final List<Roster> rosters = new ArrayList<>(List.of(Fixtures.crew()));
    private final List<Ladder> ladders = new ArrayList<>(List.of(Fixtures.night()));

    @Test
    void finds_nothing_in_a_setup_that_is_right() {
        assertThat(found()).isEmpty();
        assertThat(draft().setup().contacts()).containsOnlyKeys("ana", "ben");
    }

    @Test
    void finds_nothing_in_an_empty_setup() {
        var empty = new Draft(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

        assertThat(check.check(empty)).isEmpty();
    }

    @Test
    void an_id_must_be_unique_in_its_list() {
        sites.add(Fixtures.aSite());
        boxes.add(Fixtures.aBox());
        points.add(Fixtures.waterTank());
        contacts.add(Fixtures.ben());
        rosters.add(Fixtures.crew());
        ladders.add(Fixtures.night());

        assertThat(found())
                .containsExactly(
                        mistake("#/sites/1/id", "id must be unique in sites: mesa-9"),
                        mistake("#/boxes/1/id", "id must be unique in boxes: mesa-9-box"),
                        mistake("#/points/2/id", "id must be unique in points: mesa-9/water-tank"),
                        mistake("#/contacts/2/id", "id must be unique in contacts: ben"),
                        mistake("#/rosters/1/id", "id must be unique in rosters: crew"),
                        mistake("#/ladders/1/id", "id must be unique in ladders: night"));
    }

    @Test
    void two_sites_may_each_have_a_point_of_the_same_id() {
        sites.add(new Site("mesa-8", "Mesa 8", CHICAGO, "night"));
        points.add(point("water-tank", "mesa-8", Set.of()));

        assertThat(found()).isEmpty();
    }

    @Test
    void a_box_and_a_point_must_name_a_site() {
        boxes.add(new Box(
                "other-box", "mesa-7", Optional.empty(), Optional.empty(), true, Optional.empty(), Duration.ZERO));
        points.add(point("separator", "mesa-6", Set.of()));

        assertThat(found())
                .containsExactly(
                        mistake("#/boxes/1/site", "site must exist: mesa-7"),
                        mistake("#/points/2/site", "site must exist: mesa-6"));
    }

    @Test
    void a_site_must_name_a_ladder() {
        sites.add(new Site("mesa-8", "Mesa 8", CHICAGO, "nite"));

        assertThat(found()).containsExactly(mistake("#/sites/1/ladder", "ladder must exist: nite"));
    }

    @Test
    void a_rung_must_call_somebody_who_exists() {
        ladders.add(ladder("day", List.of("ana", "cem"), List.of("everyone", "roster:crew", "roster:crw", "crew")));

        assertThat(found())
                .containsExactly(
                        mistake("#/ladders/1/rungs/0/call/1", "contact must exist: cem"),
                        mistake("#/ladders/1/rungs/1/call/2", "roster must exist: crw"),
                        mistake("#/ladders/1/rungs/1/call/3", "contact must exist: crew"));
    }

    @Test
    void a_roster_must_name_people_or_rosters_that_exist() {
        rosters.add(roster("weekend", List.of("ana", "cem", "roster:crew", "roster:crw"), "dee"));

        assertThat(found())
                .containsExactly(
                        mistake("#/rosters/1/order/1", "contact must exist: cem"),
                        mistake("#/rosters/1/order/3", "roster must exist: crw"),
                        mistake("#/rosters/1/reliefs/0/contact", "contact must exist: dee"));
    }

    @Test
    void everyone_is_no_turn_of_a_roster() {
        rosters.add(roster("weekend", List.of("everyone")));

        assertThat(found()).containsExactly(mistake("#/rosters/1/order/0", "contact must exist: everyone"));
    }

    @Test
    void a_roster_must_not_name_itself() {
        rosters.add(roster("weekend", List.of("ana", "roster:weekend")));

        assertThat(found())
                .containsExactly(
                        mistake("#/rosters/1/order/1", "roster must not lead back to itself: weekend > weekend"));
    }

    @Test
    void a_circle_of_rosters_is_named_at_each_of_them() {
        rosters.add(roster("a", List.of("ben", "roster:b")));
        rosters.add(roster("b", List.of("roster:c")));
        rosters.add(roster("c", List.of("ana"), "roster:a"));

        assertThat(found())
                .containsExactly(
                        mistake("#/rosters/1/order/1", "roster must not lead back to itself: a > b > c > a"),
                        mistake("#/rosters/2/order/0", "roster must not lead back to itself: b > c > a > b"),
                        mistake("#/rosters/3/reliefs/0/contact", "roster must not lead back to itself: c > a > b > c"));
    }

    @Test
    void a_roster_that_leads_into_a_circle_is_not_on_it() {
        rosters.add(roster("a", List.of("roster:b")));
        rosters.add(roster("b", List.of("roster:b")));

        assertThat(found()).extracting(Mistake::pointer).containsExactly("#/rosters/2/order/0");
    }

    @Test
    void two_ways_to_the_same_roster_are_no_circle() {
        rosters.add(roster("a", List.of("roster:b", "roster:c")));
        rosters.add(roster("b", List.of("roster:d")));
        rosters.add(roster("c", List.of("roster:d")));
        rosters.add(roster("d", List.of("ana")));

        assertThat(found()).isEmpty();
    }

    @Test
    void a_contact_must_have_a_line() {
        contacts.add(contact("cem"));

        assertThat(found()).containsExactly(mistake("#/contacts/2/lines", "lines must not be empty: cem"));
    }

    @Test
    void a_line_must_use_a_channel_that_is_known() {
        contacts.add(contact("cem", new Line("mail", "cem@mesa.example"), new Line("pigeon", "loft 3")));

        assertThat(found())
                .containsExactly(
                        mistake("#/contacts/2/lines/1/channel", "channel must be one of mail, sms-mail: pigeon"));
    }

    @Test
    void nobody_may_be_called_everyone() {
        contacts.add(contact("everyone", new Line("mail", "all@mesa.example")));

        assertThat(found())
                .containsExactly(mistake("#/contacts/2/id", "id of a contact must not be the word for all: everyone"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"power-pump", "power-pump/", "/power-off", "a/b/c", "Power/off", ""})
    void suppressed_while_must_have_the_form_of_point_and_condition(String other) {
        points.add(point("separator", "mesa-9", Set.of(other)));

        assertThat(found())
                .containsExactly(mistake(
                        "#/points/2/suppressedWhile", "suppressedWhile must have the form point/condition: " + other));
    }

    @Test
    void suppressed_while_must_not_name_the_point_itself() {
        points.add(point("separator", "mesa-9", Set.of("separator/low", "power-pump/power-off")));

        assertThat(found())
                .containsExactly(mistake(
                        "#/points/2/suppressedWhile", "suppressedWhile must not name the point itself: separator/low"));
    }

    @Test
    void many_thousand_boxes_are_checked_in_no_more_than_moments() {
        for (int i = 0; i < 20_000; i++) {
            sites.add(new Site("site-" + i, "Site", CHICAGO, "night"));
            boxes.add(new Box(
                    "box-" + i,
                    "site-" + i,
                    Optional.empty(),
                    Optional.empty(),
                    true,
                    Optional.empty(),
                    Duration.ZERO));
        }

        assertTimeoutPreemptively(
                Duration.ofSeconds(5), () -> assertThat(found()).isEmpty());
    }

    private List<Mistake> found() {
        return check.check(draft()).stream()
                .map(found -> mistake(found.pointer(), found.detail()))
                .toList();
    }

    private Draft draft() {
        return new Draft(sites, boxes, points, contacts, rosters, ladders);
    }

    private static Point point(String id, String site, Set<String> suppressedWhile) {
        return new Point(id, site, "A POINT", Optional.empty(), Optional.empty(), Timing.PLAIN, suppressedWhile, true);
    }

    private static Contact contact(String id, Line... lines) {
        return new Contact(id, "Cem Ortiz", CHICAGO, Language.ES, List.of(lines), List.of(), 20);
    }

    private static Roster roster(String id, List<String> order, String... reliefs) {
        LocalDateTime start = LocalDateTime.parse("2026-11-23T07:00");
        List<Relief> relieved = List.of(reliefs).stream()
                .map(contact -> new Relief(start, start.plusDays(1), contact))
                .toList();
        return new Roster(id, CHICAGO, start, Duration.ofDays(1), order, relieved);
    }

    private static Ladder ladder(String id, List<String> first, List<String> second) {
        return new Ladder(
                id,
                Ladder.EndsWhen.ACKNOWLEDGED,
                List.of(new Rung(first, Duration.ofMinutes(5), 1), new Rung(second, Duration.ofMinutes(5), 1)),
                0);
    }

    /** In English, which is what the API says. */
    private static Mistake mistake(String pointer, String english) {
        return new Mistake(pointer, Sentence.plain(english));
    }
}
