package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

class BenchSetupTest {

    @Test
    void deals_out_the_boxes_to_the_sites_in_turn() {
        BenchSetup five =
                new BenchSetup(2, 5, ", 'heartbeat': {'every': 'PT1M'}", site -> BenchSetup.rung(site, "PT1H"));
        Map<String, List<Map<String, Object>>> setup = new Yaml().load(five.document());

        assertThat(setup.get("boxes"))
                .extracting(box -> box.get("site"))
                .containsExactly("site-0", "site-1", "site-0", "site-1", "site-0");
        assertThat(setup.get("boxes")).allSatisfy(box -> assertThat(box).containsKey("heartbeat"));
    }

    @Test
    void gives_each_site_a_box_a_ladder_and_a_contact_of_its_own() {
        Map<String, List<Map<String, Object>>> setup =
                new Yaml().load(BenchSetup.of(3).document());

        assertThat(setup.get("sites")).hasSize(3);
        assertThat(setup.get("boxes")).extracting(box -> box.get("id")).contains(BenchSetup.box(2));
        assertThat(setup.get("sites")).extracting(site -> site.get("ladder")).doesNotHaveDuplicates();
        assertThat(String.valueOf(setup.get("contacts").get(1))).contains(BenchSetup.address(1));
    }
}
