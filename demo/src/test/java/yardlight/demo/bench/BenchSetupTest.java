package yardlight.demo.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

class BenchSetupTest {

    @Test
    void gives_each_site_a_box_a_ladder_and_a_contact_of_its_own() {
        Map<String, List<Map<String, Object>>> setup = new Yaml().load(new BenchSetup(3).document());

        assertThat(setup.get("sites")).hasSize(3);
        assertThat(setup.get("boxes")).extracting(box -> box.get("id")).contains(BenchSetup.box(2));
        assertThat(setup.get("sites")).extracting(site -> site.get("ladder")).doesNotHaveDuplicates();
        assertThat(String.valueOf(setup.get("contacts").get(1))).contains(BenchSetup.address(1));
    }
}
