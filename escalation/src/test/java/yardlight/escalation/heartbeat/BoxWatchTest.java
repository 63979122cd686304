package yardlight.escalation.heartbeat;

import static org.assertj.core.api.Assertions.assertThat;
import static yardlight.escalation.Fixtures.at;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoxWatchTest {

    private static final Instant NOW = at("2026-11-25T02:00");
    private static final Optional<Duration> PATIENCE = Optional.of(Duration.ofMinutes(3));

    private final BoxWatch watch = new BoxWatch("mesa-9-box", NOW, Optional.empty(), true, Heartbeat.BARE);

    @Test
    void a_sign_of_life_sets_the_deadline_from_now() {
        BoxWatch heard = watch.heard(NOW.plusSeconds(60), PATIENCE, Heartbeat.BARE);

        assertThat(heard.heardAt()).isEqualTo(NOW.plusSeconds(60));
        assertThat(heard.deadline()).contains(NOW.plusSeconds(240));
        assertThat(heard.silent()).isFalse();
    }

    @Test
    void a_box_that_is_not_expected_to_say_anything_has_no_deadline() {
        assertThat(watch.heard(NOW, Optional.empty(), Heartbeat.BARE).deadline())
                .isEmpty();
    }

    @Test
    void a_silent_box_is_not_due_again() {
        BoxWatch gone = watch.heard(NOW, PATIENCE, Heartbeat.BARE).gone(Path.site("mesa-9"));

        assertThat(gone.silent()).isTrue();
        assertThat(gone.deadline()).isEmpty();
        assertThat(gone.heardAt()).isEqualTo(NOW);
    }

    @Test
    void what_a_box_leaves_out_this_time_is_as_it_said_last() {
        var first = said(12.9, Map.of("pump", true, "wells", false), Optional.of(NOW));
        var second = new Heartbeat(
                Optional.empty(), Map.of("wells", true), Optional.empty(), Optional.of(-91.0), Optional.empty());

        Heartbeat last =
                watch.heard(NOW, PATIENCE, first).heard(NOW, PATIENCE, second).last();

        assertThat(last.battery()).contains(12.9);
        assertThat(last.signal()).contains(-91.0);
        assertThat(watch.heard(NOW, PATIENCE, second)
                        .heard(NOW, PATIENCE, first)
                        .last()
                        .signal())
                .contains(-91.0);
        assertThat(last.feeds()).isEqualTo(Map.of("pump", true, "wells", true));
        assertThat(last.uptime()).contains(Duration.ofHours(5));
    }

    @Test
    void the_time_of_the_box_is_only_ever_that_of_the_last_heartbeat() {
        var timed = said(12.9, Map.of(), Optional.of(NOW));

        assertThat(watch.heard(NOW, PATIENCE, timed)
                        .heard(NOW, PATIENCE, Heartbeat.BARE)
                        .last()
                        .at())
                .isEmpty();
    }

    @Test
    void a_verdict_is_the_condition_of_the_alarm() {
        assertThat(Verdict.SILENT.condition()).isEqualTo("silent");
        assertThat(Verdict.COMMS_LOSS.condition()).isEqualTo("comms-loss");
    }

    private static Heartbeat said(double battery, Map<String, Boolean> feeds, Optional<Instant> at) {
        return new Heartbeat(Optional.of(Duration.ofHours(5)), feeds, Optional.of(battery), Optional.empty(), at);
    }
}
