package yardlight.demo.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.io.PrintStream;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import yardlight.demo.boxes.Places;
import yardlight.demo.gateway.BoxDoor;
import yardlight.demo.gateway.ScriptedGateway;
import yardlight.demo.night.Timeline;
import yardlight.demo.page.Shown.FeedShown;
import yardlight.demo.page.Shown.GaugeShown;
import yardlight.demo.page.Shown.SiteShown;
import yardlight.demo.stage.World;

class SiteControllerTest {

    private static final String TAKEN =
            "{\"received\": \"2026-11-25T08:13:00Z\", \"results\": [{\"outcome\": \"occurred\", \"alarm\": \"a\"}]}";

    private final ScriptedGateway gateway = new ScriptedGateway();
    private final World world = World.ofTheDemo();
    private final Timeline timeline =
            new Timeline(ZoneId.of("America/Chicago"), new PrintStream(OutputStream.nullOutputStream()));
    private final SiteController page = new SiteController(world, timeline);

    @BeforeEach
    void open() {
        Instant night = Instant.parse("2026-11-25T08:13:00Z");
        long now = System.nanoTime();
        world.clock()
                .set(new BoxDoor.Beat(night.minusSeconds(1), now - 1_000_000_000L), new BoxDoor.Beat(night, now), 1);
        world.places().all().forEach(place -> place.box().connect(new BoxDoor(gateway.address(), "k")));
    }

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void raises_a_tank_and_offers_to_lower_it() {
        gateway.answers(202, TAKEN);

        page.move(Places.MESA_9, "water-tank", true);

        assertThat(mesa().gauges())
                .contains(new GaugeShown("water-tank", "Water tank", "18.4 ft", "limit 18.0", true, "Lower", false));
        assertThat(gateway.asked())
                .singleElement()
                .satisfies(asked -> assertThat(asked.body()).contains("high-high"));
        assertThat(timeline.lines())
                .extracting(Timeline.Line::toString)
                .containsExactly(" 2:13 AM  Mesa 9                   water tank at 18.4 ft, limit 18.0 (by hand)");
    }

    @Test
    void cuts_the_mains_of_one_feed_and_leaves_the_other() {
        gateway.answers(202, "{\"received\": \"2026-11-25T08:13:00Z\"}");

        page.feed(Places.MESA_9, "pump", false);

        assertThat(mesa().feeds()).containsExactly(new FeedShown("wells", true), new FeedShown("pump", false));
    }

    @Test
    void shows_what_a_box_keeps_while_its_link_is_broken() {
        page.link(Places.MESA_9, false);
        page.move(Places.MESA_9, "separator", true);

        assertThat(mesa().linked()).isFalse();
        assertThat(mesa().kept()).isEqualTo(1);
    }

    private SiteShown mesa() {
        return page.sites().get(0);
    }
}
