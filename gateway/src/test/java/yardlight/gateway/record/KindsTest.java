package yardlight.gateway.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardlight.escalation.Entry;
import yardlight.gateway.page.Tongue;
import yardlight.gateway.page.Tongues;

class KindsTest {

    @ParameterizedTest
    @EnumSource(Entry.What.class)
    void have_a_name_in_both_languages(Entry.What what) {
        for (Tongue tongue : List.of(Tongues.ENGLISH, Tongues.SPANISH)) {
            assertThat(tongue.say("kind." + what.word())).isNotBlank();
        }
    }
}
