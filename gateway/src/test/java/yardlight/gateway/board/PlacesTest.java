package yardlight.gateway.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardlight.db.alarm.RecordedAlarm;
import yardlight.escalation.Fixtures;
import yardlight.escalation.alarm.Alarm;
import yardlight.escalation.alarm.AlarmKey;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.heartbeat.BoxWatch;
import yardlight.escalation.heartbeat.Heartbeat;
import yardlight.escalation.setup.Box;
import yardlight.escalation.setup.Setup;
import yardlight.escalation.setup.Site;
import yardlight.gateway.page.Tongues;

class PlacesTest {

    private static final Instant NOW = Fixtures.at("2026-11-25T02:15");

    @Test
    void bring_together_the_alarms_of_a_site_and_keep_the_worst_first() {
        Places places = places(3);

        List<Sheet.Place> told = places.of(List.of(alarm("site-2", "a"), alarm("site-0", "b"), alarm("site-2", "c")));

        assertThat(told).extracting(Sheet.Place::name).containsExactly("Site 2", "Site 0");
        assertThat(told.get(0).cards()).extracting(Sheet.Card::name).containsExactly("A high", "C high");
    }

    @Test
    void tell_a_flood_in_short() {
        List<RecordedAlarm> flood = IntStream.range(0, Places.CARDS + 5)
                .mapToObj(i -> alarm("site-" + i / 2, "p" + i))
                .toList();

        List<Sheet.Place> told = places(20).of(flood);

        assertThat(told.stream().mapToInt(place -> place.cards().size()).sum()).isEqualTo(Places.CARDS);
        assertThat(told.stream().mapToInt(place -> place.rows().size()).sum()).isEqualTo(5);
    }

    @Test
    void say_of_quiet_sites_when_each_last_spoke_and_which_the_longest_ago() {
        Sheet.Quiet quiet = places(3).quiet(Set.of("site-0"));

        assertThat(quiet.places())
                .extracting(Sheet.QuietPlace::heard)
                .containsExactly("heard 60 s ago", "heard 2 min ago");
        assertThat(quiet.folded()).isFalse();
        assertThat(quiet.longest()).isEqualTo("longest ago: Site 2, heard 2 min ago");
        assertThat(places(Places.SHOWN + 1).quiet(Set.of()).folded()).isTrue();
    }

    /** So many sites, each of which was heard a minute longer ago than the one before. */
    private static Places places(int count) {
        List<Site> sites = IntStream.range(0, count)
                .mapToObj(i -> new Site("site-" + i, "Site " + i, Fixtures.CHICAGO, "night"))
                .toList();
        List<Box> boxes = sites.stream()
                .map(site -> new Box(
                        site.id() + "-box",
                        site.id(),
                        Optional.empty(),
                        Optional.empty(),
                        true,
                        Optional.empty(),
                        Duration.ZERO))
                .toList();
        var setup = new Setup(sites, boxes, List.of(), List.of(), List.of(), List.of(Fixtures.night()));
        Map<String, BoxWatch> watches = IntStream.range(0, count)
                .mapToObj(i -> new BoxWatch(
                        "site-" + i + "-box", NOW.minusSeconds(60L * i), Optional.empty(), false, Heartbeat.BARE))
                .collect(Collectors.toMap(BoxWatch::box, watch -> watch));
        return new Places(setup, watches, Tongues.ENGLISH, NOW);
    }

    private static RecordedAlarm alarm(String site, String point) {
        Alarm alarm = Alarm.normal(new AlarmKey(site, point, "high"))
                .draft()
                .occurrence(1)
                .state(AlarmState.UNACKNOWLEDGED)
                .done();
        return new RecordedAlarm(alarm, Optional.empty());
    }
}
