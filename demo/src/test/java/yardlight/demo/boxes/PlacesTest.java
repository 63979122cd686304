package yardlight.demo.boxes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import yardlight.demo.cast.Cast;

class PlacesTest {

    private final Cast cast = Cast.ofTheDemo();
    private final Places places = new Places(cast, InstantSource.fixed(Instant.EPOCH));

    @Test
    void have_the_sites_boxes_and_points_of_the_setup_document() {
        assertThat(places.all())
                .extracting(Place::id)
                .containsExactlyElementsOf(cast.siteNames().keySet());
        assertThat(places.all()).allSatisfy(place -> {
            assertThat(cast.siteOfBox()).containsEntry(place.box().id(), place.id());
            assertThat(place.gauges())
                    .allSatisfy(gauge -> assertThat(cast.document())
                            .contains("{id: " + gauge.point() + ", site: " + place.id() + ","));
            assertThat(place.box().feeds().keySet())
                    .allSatisfy(feed ->
                            assertThat(cast.document()).contains("{id: power-" + feed + ", site: " + place.id() + ","));
        });
    }

    @Test
    void beat_as_often_as_the_setup_document_promises() {
        assertThat(cast.document().split("heartbeat: \\{every: " + Heartbeats.EVERY + ",", -1))
                .hasSize(4 + 1);
    }

    @Test
    void post_a_gauge_with_its_numbers_and_a_switch_without() {
        Place mesa = places.at(Places.MESA_9);

        assertThat(mesa.gauge("water-tank").event(true))
                .containsEntry("state", "active")
                .containsEntry("value", 18.4)
                .containsEntry("limit", 18.0)
                .containsEntry("unit", "ft");
        assertThat(mesa.gauge("injection-pump").event(false)).containsOnlyKeys("point", "condition", "state");
    }

    @Test
    void say_what_one_would_see_there() {
        Place mesa = places.at(Places.MESA_9);

        assertThat(mesa.gauge("water-tank").says(true)).isEqualTo("water tank at 18.4 ft, limit 18.0");
        assertThat(mesa.gauge("injection-pump").says(true)).isEqualTo("injection pump off");
    }

    @Test
    void are_only_these() {
        assertThatThrownBy(() -> places.at("mesa-8")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> places.at(Places.MESA_9).gauge("door")).isInstanceOf(IllegalArgumentException.class);
    }
}
